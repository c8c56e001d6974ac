using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Slowglow.Storage.Sqlite.Migrations
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
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    Contact = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_customers", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "settings",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false),
                    Words = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_settings", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "sheets",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Title = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: false),
                    AddedAt = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_sheets", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "jobs",
                columns: table => new
                {
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    CustomerId = table.Column<int>(type: "INTEGER", nullable: false),
                    SheetId = table.Column<int>(type: "INTEGER", nullable: false),
                    BookedIn = table.Column<long>(type: "INTEGER", nullable: false),
                    Promised = table.Column<long>(type: "INTEGER", nullable: true),
                    limit_figure = table.Column<decimal>(type: "TEXT", precision: 18, scale: 4, nullable: true),
                    limit_currency = table.Column<string>(type: "TEXT", maxLength: 3, nullable: true),
                    mains_volts = table.Column<double>(type: "REAL", nullable: false),
                    maker = table.Column<string>(type: "TEXT", nullable: false),
                    model = table.Column<string>(type: "TEXT", nullable: false),
                    serial = table.Column<string>(type: "TEXT", nullable: false)
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
                name: "timeline",
                columns: table => new
                {
                    JobNumber = table.Column<int>(type: "INTEGER", nullable: false),
                    Sequence = table.Column<int>(type: "INTEGER", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false),
                    kind = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    text = table.Column<string>(type: "TEXT", nullable: true),
                    setup = table.Column<string>(type: "TEXT", nullable: true),
                    refers_to = table.Column<int>(type: "INTEGER", nullable: true)
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
                name: "IX_jobs_CustomerId",
                table: "jobs",
                column: "CustomerId");

            migrationBuilder.CreateIndex(
                name: "IX_jobs_SheetId",
                table: "jobs",
                column: "SheetId");

            migrationBuilder.Sql("CREATE TRIGGER timeline_keeps BEFORE UPDATE ON timeline BEGIN SELECT RAISE(ABORT, 'the timeline is append-only'); END;");
            migrationBuilder.Sql("CREATE TRIGGER timeline_stays BEFORE DELETE ON timeline BEGIN SELECT RAISE(ABORT, 'the timeline is append-only'); END;");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
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
        }
    }
}
