namespace Slowglow.Sheets;

/// <summary>Finds what somebody probably meant.</summary>
internal static class NearestWords
{
    /// <summary>The nearest candidate when it is near enough to be a slip of the pen, otherwise null.</summary>
    internal static string? Find(string word, IEnumerable<string> candidates) =>
        candidates
            .Select(c => (Name: c, Steps: Distance(word, c)))
            .Where(c => c.Steps <= Math.Max(1, Math.Min(word.Length, c.Name.Length) / 3))
            .OrderBy(c => c.Steps)
            .ThenBy(c => c.Name, StringComparer.Ordinal)
            .Select(c => c.Name)
            .FirstOrDefault();

    /// <summary>" Did you mean X?" or nothing.</summary>
    internal static string Suggestion(string word, IEnumerable<string> candidates) =>
        Find(word, candidates) is { } near ? $"did you mean {near}?" : "";

    /// <summary>Insertions, deletions, substitutions and swaps of neighbours; case does not count.</summary>
    internal static int Distance(string one, string other)
    {
        var a = one.ToUpperInvariant();
        var b = other.ToUpperInvariant();
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            d[i, 0] = i;
        }

        for (var j = 0; j <= b.Length; j++)
        {
            d[0, j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var swap = a[i - 1] == b[j - 1] ? 0 : 1;
                d[i, j] = Math.Min(Math.Min(d[i - 1, j] + 1, d[i, j - 1] + 1), d[i - 1, j - 1] + swap);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
                }
            }
        }

        return d[a.Length, b.Length];
    }
}
