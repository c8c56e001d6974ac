using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Slowglow.Storage.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class Workshop : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "data",
                table: "timeline",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "written_by",
                table: "timeline",
                type: "TEXT",
                maxLength: 80,
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "rules",
                table: "settings",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AlterColumn<int>(
                name: "SheetId",
                table: "jobs",
                type: "INTEGER",
                nullable: true,
                oldClrType: typeof(int),
                oldType: "INTEGER");

            migrationBuilder.AddColumn<string>(
                name: "Address",
                table: "customers",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "Mail",
                table: "customers",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.CreateTable(
                name: "board",
                columns: table => new
                {
                    JobNumber = table.Column<int>(type: "INTEGER", nullable: false),
                    CustomerId = table.Column<int>(type: "INTEGER", nullable: false),
                    Customer = table.Column<string>(type: "TEXT", nullable: false),
                    Unit = table.Column<string>(type: "TEXT", nullable: false),
                    Complaint = table.Column<string>(type: "TEXT", nullable: false),
                    State = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    WaitsFor = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    Since = table.Column<long>(type: "INTEGER", nullable: false),
                    BookedIn = table.Column<long>(type: "INTEGER", nullable: false),
                    Promised = table.Column<long>(type: "INTEGER", nullable: true),
                    UnitKey = table.Column<string>(type: "TEXT", nullable: false),
                    ModelKey = table.Column<string>(type: "TEXT", nullable: false),
                    Words = table.Column<string>(type: "TEXT", nullable: false),
                    Readings = table.Column<int>(type: "INTEGER", nullable: false),
                    LastSequence = table.Column<int>(type: "INTEGER", nullable: false)
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
                    Kind = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    JobNumber = table.Column<int>(type: "INTEGER", nullable: false),
                    Day = table.Column<int>(type: "INTEGER", nullable: false),
                    data = table.Column<string>(type: "TEXT", nullable: false)
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
                name: "IX_papers_Day",
                table: "papers",
                column: "Day");

            migrationBuilder.CreateIndex(
                name: "IX_papers_JobNumber",
                table: "papers",
                column: "JobNumber");

            migrationBuilder.Sql("CREATE TRIGGER papers_keep BEFORE UPDATE ON papers BEGIN SELECT RAISE(ABORT, 'papers are never changed'); END;");
            migrationBuilder.Sql("CREATE TRIGGER papers_stay BEFORE DELETE ON papers BEGIN SELECT RAISE(ABORT, 'papers are never removed'); END;");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "board");

            migrationBuilder.DropTable(
                name: "papers");

            migrationBuilder.DropColumn(
                name: "data",
                table: "timeline");

            migrationBuilder.DropColumn(
                name: "written_by",
                table: "timeline");

            migrationBuilder.DropColumn(
                name: "rules",
                table: "settings");

            migrationBuilder.DropColumn(
                name: "Address",
                table: "customers");

            migrationBuilder.DropColumn(
                name: "Mail",
                table: "customers");

            migrationBuilder.AlterColumn<int>(
                name: "SheetId",
                table: "jobs",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0,
                oldClrType: typeof(int),
                oldType: "INTEGER",
                oldNullable: true);
        }
    }
}
