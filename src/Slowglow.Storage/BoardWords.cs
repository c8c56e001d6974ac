using System.Globalization;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Storage;

/// <summary>
/// Looks through the words of the board by the index that each database has for parts of words: SQLite a full-text table of trigrams, PostgreSQL a
/// trigram index where the server has that extension.
/// </summary>
public static class BoardWords
{
    private const int Indexed = 3;

    private static readonly WaitsFor[] Open = [WaitsFor.Us, WaitsFor.Customer, WaitsFor.Parts, WaitsFor.Collection];

    /// <summary>Cards in which every word occurs, in small letters as the board keeps them: open jobs first, then newest first.</summary>
    /// <param name="words">At least one.</param>
    public static async Task<IReadOnlyList<BoardCard>> FindAsync(
        ShopDatabase database,
        IReadOnlyList<string> words,
        int most,
        CancellationToken cancel = default
    )
    {
        // Apart from each other, so that both are read in their order and only as far as wanted.
        var open = await words
            .Aggregate(
                database.Board.AsNoTracking().Where(c => Open.Contains(c.WaitsFor)),
                (found, word) => found.Where(c => c.Words.Contains(word))
            )
            .OrderByDescending(c => c.JobNumber)
            .Take(most)
            .ToListAsync(cancel);
        return open.Count == most ? open : [.. open, .. await Gone(database, words, most - open.Count).ToListAsync(cancel)];
    }

    private static IQueryable<BoardCard> Gone(ShopDatabase database, IReadOnlyList<string> words, int most)
    {
        if (database.Database.ProviderName?.EndsWith("Sqlite", StringComparison.Ordinal) == true)
        {
            var grams = words.SelectMany(Grams).Distinct().ToList();
            return grams.Count == 0 ? Plain(database, words, most) : ByTrigrams(database, grams, words, most);
        }

        return words
            .Select(w => "%" + Escape(w) + "%")
            .Aggregate(
                database.Board.AsNoTracking().Where(c => c.WaitsFor == WaitsFor.Nothing),
                (found, pattern) => found.Where(c => EF.Functions.Like(c.Words, pattern))
            )
            .OrderByDescending(c => c.JobNumber)
            .Take(most);
    }

    private static IQueryable<BoardCard> Plain(ShopDatabase database, IReadOnlyList<string> words, int most) =>
        words
            .Aggregate(
                database.Board.AsNoTracking().Where(c => c.WaitsFor == WaitsFor.Nothing),
                (found, word) => found.Where(c => c.Words.Contains(word))
            )
            .OrderByDescending(c => c.JobNumber)
            .Take(most);

    /// <summary>
    /// The full-text table yields the cards that have all the trigrams, newest first of itself, so that words that are everywhere cost no more than rare
    /// ones; whether the trigrams stand together is asked of the card.
    /// </summary>
    private static IQueryable<BoardCard> ByTrigrams(
        ShopDatabase database,
        IReadOnlyList<string> grams,
        IReadOnlyList<string> words,
        int most
    )
    {
        var match = string.Join(" AND ", grams.Select(g => $"\"{g.Replace("\"", "\"\"", StringComparison.Ordinal)}\""));
        var sql = new StringBuilder(
            """
            SELECT b.* FROM board_words CROSS JOIN board AS b ON b."JobNumber" = board_words.rowid
            WHERE board_words MATCH {0} AND b."WaitsFor" = 'Nothing'
            """
        );
        for (var i = 1; i <= words.Count; i++)
        {
            sql.Append(CultureInfo.InvariantCulture, $" AND instr(b.\"Words\", {{{i}}}) > 0");
        }

        sql.Append(CultureInfo.InvariantCulture, $" ORDER BY board_words.rowid DESC LIMIT {most}");
        return database.Board.FromSqlRaw(sql.ToString(), [match, .. words]).AsNoTracking();
    }

    /// <summary>Every three signs of a word that follow each other; none of a shorter word.</summary>
    private static IEnumerable<string> Grams(string word)
    {
        var runes = word.EnumerateRunes().ToList();
        return word.Any(char.IsControl) || runes.Count < Indexed
            ? []
            : Enumerable
                .Range(0, runes.Count - Indexed + 1)
                .Select(i => string.Concat(runes.Skip(i).Take(Indexed).Select(r => r.ToString())));
    }

    private static string Escape(string word) =>
        word.Replace("\\", "\\\\", StringComparison.Ordinal)
            .Replace("%", "\\%", StringComparison.Ordinal)
            .Replace("_", "\\_", StringComparison.Ordinal);
}
