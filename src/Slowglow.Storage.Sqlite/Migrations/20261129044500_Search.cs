using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Slowglow.Storage.Sqlite.Migrations
{
    /// <summary>An index of all parts of words that the search box looks through. A migration that makes the board anew has to make its triggers anew.</summary>
    public partial class Search : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            // Which trigrams a card has, not where: a third of the size, and the card itself is asked in the end.
            migrationBuilder.Sql(
                """
                CREATE VIRTUAL TABLE board_words USING fts5(Words, content='board', content_rowid='JobNumber', tokenize='trigram', detail=none, columnsize=0);
                """);
            migrationBuilder.Sql("INSERT INTO board_words(board_words) VALUES ('rebuild');");
            migrationBuilder.Sql(
                """
                CREATE TRIGGER board_words_add AFTER INSERT ON board BEGIN
                  INSERT INTO board_words(rowid, Words) VALUES (new.JobNumber, new.Words);
                END;
                """);
            migrationBuilder.Sql(
                """
                CREATE TRIGGER board_words_drop AFTER DELETE ON board BEGIN
                  INSERT INTO board_words(board_words, rowid, Words) VALUES ('delete', old.JobNumber, old.Words);
                END;
                """);
            migrationBuilder.Sql(
                """
                CREATE TRIGGER board_words_change AFTER UPDATE OF Words ON board WHEN old.Words IS NOT new.Words BEGIN
                  INSERT INTO board_words(board_words, rowid, Words) VALUES ('delete', old.JobNumber, old.Words);
                  INSERT INTO board_words(rowid, Words) VALUES (new.JobNumber, new.Words);
                END;
                """);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.Sql("DROP TRIGGER board_words_add;");
            migrationBuilder.Sql("DROP TRIGGER board_words_drop;");
            migrationBuilder.Sql("DROP TRIGGER board_words_change;");
            migrationBuilder.Sql("DROP TABLE board_words;");
        }
    }
}
