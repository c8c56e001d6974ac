using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace Slowglow.Storage.Postgres.Migrations
{
    /// <inheritdoc />
    public partial class Stock : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Blocked",
                table: "board",
                type: "text",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<long>(
                name: "PartsDue",
                table: "board",
                type: "bigint",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "stock",
                columns: table => new
                {
                    Id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Part = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    Bin = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    Equivalents = table.Column<string>(type: "text", nullable: false),
                    Least = table.Column<int>(type: "integer", nullable: false),
                    OnHand = table.Column<int>(type: "integer", nullable: false),
                    CostEach = table.Column<decimal>(type: "numeric(18,4)", precision: 18, scale: 4, nullable: false),
                    MoveCount = table.Column<int>(type: "integer", nullable: false),
                    Words = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_stock", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "stock_moves",
                columns: table => new
                {
                    ItemId = table.Column<int>(type: "integer", nullable: false),
                    Sequence = table.Column<int>(type: "integer", nullable: false),
                    Pieces = table.Column<int>(type: "integer", nullable: false),
                    Left = table.Column<int>(type: "integer", nullable: false),
                    At = table.Column<long>(type: "bigint", nullable: false),
                    JobNumber = table.Column<int>(type: "integer", nullable: true),
                    written_by = table.Column<string>(type: "character varying(80)", maxLength: 80, nullable: true),
                    Why = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_stock_moves", x => new { x.ItemId, x.Sequence });
                    table.ForeignKey(
                        name: "FK_stock_moves_jobs_JobNumber",
                        column: x => x.JobNumber,
                        principalTable: "jobs",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_stock_moves_stock_ItemId",
                        column: x => x.ItemId,
                        principalTable: "stock",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_stock_moves_JobNumber",
                table: "stock_moves",
                column: "JobNumber");

            // Cards of open jobs are behind now, so that the start writes what blocks them.
            migrationBuilder.Sql("UPDATE board SET \"LastSequence\" = \"LastSequence\" + 1 WHERE \"WaitsFor\" <> 'Nothing';");
            migrationBuilder.Sql("CREATE TRIGGER stock_moves_keep BEFORE UPDATE OR DELETE ON stock_moves FOR EACH ROW EXECUTE FUNCTION append_only();");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "stock_moves");

            migrationBuilder.DropTable(
                name: "stock");

            migrationBuilder.DropColumn(
                name: "Blocked",
                table: "board");

            migrationBuilder.DropColumn(
                name: "PartsDue",
                table: "board");
        }
    }
}
