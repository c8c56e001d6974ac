namespace Slowglow.Sheets.Devices;

/// <summary>Type numbers as people write them.</summary>
internal static class TypeNumber
{
    /// <summary>The number without what writers differ in: case, spaces, hyphens, dots. "6v6-gt" is "6V6GT".</summary>
    public static string Plain(string written) =>
        string.Concat(written.Where(c => char.IsLetterOrDigit(c) || c is '/' or '+').Select(char.ToUpperInvariant));

    /// <summary>
    /// Edits between two plain numbers in halves of a letter. A wrong or missing digit makes it another type and counts double;
    /// letters that are mistaken for digits (O for 0, I for 1) and letters added at the end (packages, grades) count least.
    /// </summary>
    public static int Distance(string wanted, string known)
    {
        var row = new int[known.Length + 1];
        for (var j = 1; j <= known.Length; j++)
        {
            row[j] = row[j - 1] + Weight(known[j - 1], j > wanted.Length);
        }

        for (var i = 1; i <= wanted.Length; i++)
        {
            var diagonal = row[0];
            row[0] += Weight(wanted[i - 1], false);
            for (var j = 1; j <= known.Length; j++)
            {
                var replaced = diagonal + Replacement(wanted[i - 1], known[j - 1]);
                var dropped = row[j] + Weight(wanted[i - 1], j == known.Length);
                var added = row[j - 1] + Weight(known[j - 1], i == wanted.Length);
                diagonal = row[j];
                row[j] = Math.Min(replaced, Math.Min(dropped, added));
            }
        }

        return row[known.Length];
    }

    private static int Weight(char c, bool atEnd) => char.IsDigit(c) ? 4 : atEnd ? 1 : 2;

    private static int Replacement(char a, char b)
    {
        if (a == b)
        {
            return 0;
        }

        if (Looks(a) == Looks(b))
        {
            return 1;
        }

        return char.IsDigit(a) && char.IsDigit(b) ? 3 : char.IsDigit(a) || char.IsDigit(b) ? 4 : 2;
    }

    private static char Looks(char c) => c switch { 'O' or 'Q' => '0', 'I' or 'L' => '1', 'S' => '5', 'B' => '8', 'Z' => '2', _ => c };
}
