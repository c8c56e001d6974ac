using System.Text;

namespace Slowglow.Sheets.Devices;

/// <summary>Type numbers as people write them.</summary>
internal static class TypeNumber
{
    // Costs of one difference. A digit makes another type of it, a letter at the end (package, grade) hardly does.
    private const int Misread = 1;
    private const int LastLetter = 2;
    private const int Letter = 4;
    private const int Swap = 4;
    private const int NextDigit = 5;
    private const int Digit = 6;

    /// <summary>The number without what writers differ in: case, spaces, hyphens, dots. "6v6-gt" is "6V6GT".</summary>
    public static string Plain(string written)
    {
        var plain = new StringBuilder(written.Length);
        foreach (var c in written)
        {
            if (char.IsLetterOrDigit(c) || c is '/' or '+')
            {
                plain.Append(char.ToUpperInvariant(c));
            }
        }

        return plain.ToString();
    }

    /// <summary>What is printed on a Japanese transistor leaves out the 2S: "C945" is a 2SC945.</summary>
    public static string Unabbreviated(string plain) =>
        plain.Length >= 3 && plain[0] is 'A' or 'B' or 'C' or 'D' or 'J' or 'K' && char.IsDigit(plain[1]) ? "2S" + plain : plain;

    /// <summary>How far one plain number is from another, 0 = the same; two characters the wrong way round are one slip.</summary>
    public static int Distance(string wanted, string known)
    {
        var cost = new int[wanted.Length + 1, known.Length + 1];
        for (var i = 1; i <= wanted.Length; i++)
        {
            cost[i, 0] = cost[i - 1, 0] + Missing(wanted[i - 1], false);
        }

        for (var j = 1; j <= known.Length; j++)
        {
            cost[0, j] = cost[0, j - 1] + Missing(known[j - 1], false);
        }

        for (var i = 1; i <= wanted.Length; i++)
        {
            for (var j = 1; j <= known.Length; j++)
            {
                cost[i, j] = Cheapest(cost, i, j, wanted, known);
            }
        }

        return cost[wanted.Length, known.Length];
    }

    private static int Cheapest(int[,] cost, int i, int j, string wanted, string known)
    {
        var (a, b) = (wanted[i - 1], known[j - 1]);
        var best = Math.Min(
            cost[i - 1, j - 1] + Replaced(a, b),
            Math.Min(cost[i - 1, j] + Missing(a, j == known.Length), cost[i, j - 1] + Missing(b, i == wanted.Length))
        );
        var swapped = i > 1 && j > 1 && a == known[j - 2] && b == wanted[i - 2];
        return swapped ? Math.Min(best, cost[i - 2, j - 2] + Swap) : best;
    }

    private static int Missing(char c, bool atEnd) =>
        char.IsDigit(c) ? Digit
        : atEnd ? LastLetter
        : Letter;

    private static int Replaced(char a, char b) =>
        a == b ? 0
        : Looks(a) == Looks(b) ? Misread
        : !char.IsDigit(a) && !char.IsDigit(b) ? Letter
        : Math.Abs(a - b) == 1 ? NextDigit
        : Digit;

    /// <summary>The digit that a letter is taken for on a worn print.</summary>
    private static char Looks(char c) =>
        c switch
        {
            'O' or 'Q' => '0',
            'I' or 'L' => '1',
            'S' => '5',
            'B' => '8',
            'Z' => '2',
            _ => c,
        };
}
