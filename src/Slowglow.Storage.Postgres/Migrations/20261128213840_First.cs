using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace Slowglow.Storage.Postgres.Migrations
{
    /// <inheritdoc />
    public partial class First : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "customers",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    Contact = table.Column<string>(type: "text", nullable: false),
                    Mail = table.Column<string>(type: "text", nullable: false),
                    Address = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_customers", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "settings",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false),
                    Words = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    rules = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_settings", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "sheets",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Title = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    Text = table.Column<string>(type: "text", nullable: false),
                    AddedAt = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_sheets", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "jobs",
                columns: table => new
                {
                    Number = table.Column<int>(type: "integer", nullable: false),
                    CustomerId = table.Column<int>(type: "integer", nullable: false),
                    SheetId = table.Column<int>(type: "integer", nullable: true),
                    BookedIn = table.Column<long>(type: "bigint", nullable: false),
                    Promised = table.Column<long>(type: "bigint", nullable: true),
                    limit_figure = table.Column<decimal>(type: "numeric(18,4)", precision: 18, scale: 4, nullable: true),
                    limit_currency = table.Column<string>(type: "character varying(3)", maxLength: 3, nullable: true),
                    mains_volts = table.Column<double>(type: "double precision", nullable: false),
                    maker = table.Column<string>(type: "text", nullable: false),
                    model = table.Column<string>(type: "text", nullable: false),
                    serial = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_jobs", x => x.Number);
                    table.ForeignKey(
                        name: "FK_jobs_customers_CustomerId",
                        column: x => x.CustomerId,
                        principalTable: "customers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_jobs_sheets_SheetId",
                        column: x => x.SheetId,
                        principalTable: "sheets",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "board",
                columns: table => new
                {
                    JobNumber = table.Column<int>(type: "integer", nullable: false),
                    CustomerId = table.Column<int>(type: "integer", nullable: false),
                    Customer = table.Column<string>(type: "text", nullable: false),
                    Unit = table.Column<string>(type: "text", nullable: false),
                    Complaint = table.Column<string>(type: "text", nullable: false),
                    State = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    WaitsFor = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    Since = table.Column<long>(type: "bigint", nullable: false),
                    BookedIn = table.Column<long>(type: "bigint", nullable: false),
                    Promised = table.Column<long>(type: "bigint", nullable: true),
                    UnitKey = table.Column<string>(type: "text", nullable: false),
                    ModelKey = table.Column<string>(type: "text", nullable: false),
                    Words = table.Column<string>(type: "text", nullable: false),
                    Readings = table.Column<int>(type: "integer", nullable: false),
                    LastSequence = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_board", x => x.JobNumber);
                    table.ForeignKey(
                        name: "FK_board_jobs_JobNumber",
                        column: x => x.JobNumber,
                        principalTable: "jobs",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "papers",
                columns: table => new
                {
                    Kind = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    Number = table.Column<int>(type: "integer", nullable: false),
                    JobNumber = table.Column<int>(type: "integer", nullable: false),
                    Day = table.Column<int>(type: "integer", nullable: false),
                    data = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_papers", x => new { x.Kind, x.Number });
                    table.ForeignKey(
                        name: "FK_papers_jobs_JobNumber",
                        column: x => x.JobNumber,
                        principalTable: "jobs",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "timeline",
                columns: table => new
                {
                    JobNumber = table.Column<int>(type: "integer", nullable: false),
                    Sequence = table.Column<int>(type: "integer", nullable: false),
                    At = table.Column<long>(type: "bigint", nullable: false),
                    written_by = table.Column<string>(type: "character varying(80)", maxLength: 80, nullable: true),
                    kind = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    text = table.Column<string>(type: "text", nullable: true),
                    data = table.Column<string>(type: "text", nullable: true),
                    setup = table.Column<string>(type: "text", nullable: true),
                    refers_to = table.Column<int>(type: "integer", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_timeline", x => new { x.JobNumber, x.Sequence });
                    table.ForeignKey(
                        name: "FK_timeline_jobs_JobNumber",
                        column: x => x.JobNumber,
                        principalTable: "jobs",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_board_CustomerId",
                table: "board",
                column: "CustomerId");

            migrationBuilder.CreateIndex(
                name: "IX_board_ModelKey",
                table: "board",
                column: "ModelKey");

            migrationBuilder.CreateIndex(
                name: "IX_board_UnitKey",
                table: "board",
                column: "UnitKey");

            migrationBuilder.CreateIndex(
                name: "IX_board_WaitsFor_Promised",
                table: "board",
                columns: new[] { "WaitsFor", "Promised" });

            migrationBuilder.CreateIndex(
                name: "IX_jobs_CustomerId",
                table: "jobs",
                column: "CustomerId");

            migrationBuilder.CreateIndex(
                name: "IX_jobs_SheetId",
                table: "jobs",
                column: "SheetId");

            migrationBuilder.CreateIndex(
                name: "IX_papers_Day",
                table: "papers",
                column: "Day");

            migrationBuilder.CreateIndex(
                name: "IX_papers_JobNumber",
                table: "papers",
                column: "JobNumber");

            migrationBuilder.Sql("CREATE FUNCTION append_only() RETURNS trigger AS $$ BEGIN RAISE EXCEPTION 'rows of % are never changed or removed', TG_TABLE_NAME; END $$ LANGUAGE plpgsql;");
            migrationBuilder.Sql("CREATE TRIGGER timeline_keeps BEFORE UPDATE OR DELETE ON timeline FOR EACH ROW EXECUTE FUNCTION append_only();");
            migrationBuilder.Sql("CREATE TRIGGER papers_keep BEFORE UPDATE OR DELETE ON papers FOR EACH ROW EXECUTE FUNCTION append_only();");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "board");

            migrationBuilder.DropTable(
                name: "papers");

            migrationBuilder.DropTable(
                name: "settings");

            migrationBuilder.DropTable(
                name: "timeline");

            migrationBuilder.DropTable(
                name: "jobs");

            migrationBuilder.DropTable(
                name: "customers");

            migrationBuilder.DropTable(
                name: "sheets");

            migrationBuilder.Sql("DROP FUNCTION append_only();");
        }
    }
}
