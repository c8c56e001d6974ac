using System.Text.RegularExpressions;
using Slowglow.Sheets;

namespace Slowglow.Bench.Writing;

/// <summary>The words that a finding's remedy names as what was probably meant.</summary>
internal static partial class Replacements
{
    /// <summary>Empty when the remedy names none.</summary>
    public static IReadOnlyList<string> Of(Finding finding)
    {
        if (Meant().Match(finding.Remedy) is { Success: true } meant)
        {
            return [meant.Groups[1].Value];
        }

        var nearest = Nearest().Match(finding.Remedy);
        return nearest.Success ? nearest.Groups[1].Value.Split(", ") : [];
    }

    [GeneratedRegex(@"did you mean ([^?\s]+)\?", RegexOptions.CultureInvariant)]
    private static partial Regex Meant();

    [GeneratedRegex(@"the nearest are ([^;]+)", RegexOptions.CultureInvariant)]
    private static partial Regex Nearest();
}
