using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Slowglow.Storage.Postgres.Migrations
{
    /// <summary>An index of all parts of words that the search box looks through. A server without that extension searches without it, slower.</summary>
    public partial class Search : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.Sql(
                """
                DO $$ BEGIN
                  CREATE EXTENSION IF NOT EXISTS pg_trgm;
                  CREATE INDEX board_words ON board USING gin ("Words" gin_trgm_ops);
                EXCEPTION WHEN insufficient_privilege OR undefined_file OR feature_not_supported THEN
                  RAISE NOTICE 'pg_trgm is not to be had: the search works without its index';
                END $$;
                """);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.Sql("DROP INDEX IF EXISTS board_words;");
        }
    }
}
