using System.Globalization;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Bench.Counter;

/// <summary>Splits what is typed into words to look for. Signs in a telephone number do not matter.</summary>
internal static class SearchWords
{
    private const int LongestLine = 200;

    public static IEnumerable<string> Of(string typed)
    {
        var line = new string([
            .. BoardCard
                .Fold(typed.Length > LongestLine ? typed[..LongestLine] : typed)
                .Where(c => !char.IsControl(c) || char.IsWhiteSpace(c)),
        ]).Trim();
        return line.Any(char.IsDigit) && line.All(c => char.IsDigit(c) || c is ' ' or '-' or '/' or '(' or ')' or '+' or '.')
            ? [Digits(line)]
            : line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Where(w => w.Length > 0);
    }

    private static string Digits(string line) => new([.. line.Where(char.IsDigit)]);
}
