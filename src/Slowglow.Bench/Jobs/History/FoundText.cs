using System.Text.RegularExpressions;
using Slowglow.Circuits;
using Slowglow.Diagnosis;

namespace Slowglow.Bench.Jobs.History;

/// <summary>Reads what a job came down to: "R10 drifted up", "C4 leaky", "V1". How bad it was does not matter.</summary>
public static partial class FoundText
{
    private static readonly (string Words, FailureMode Mode)[] Ways =
    [
        ("low emission", FailureMode.LowEmission),
        ("weak", FailureMode.LowEmission),
        ("wrong value", FailureMode.WrongValue),
        ("backwards", FailureMode.Backwards),
        ("bad contact", FailureMode.BadContact),
        ("dirty", FailureMode.BadContact),
        ("stuck high", FailureMode.StuckHigh),
        ("stuck low", FailureMode.StuckLow),
        ("dried", FailureMode.DriedOut),
        ("drifted", FailureMode.Drifted),
        ("leaky", FailureMode.Leaky),
        ("gassy", FailureMode.Gassy),
        ("dead", FailureMode.Dead),
        ("short", FailureMode.Short),
        ("open", FailureMode.Open),
        ("blown", FailureMode.Open),
    ];

    /// <summary>One job; null when the text does not begin with a part that can fail.</summary>
    public static FoundBefore? Read(string text, Circuit circuit)
    {
        var match = Shape().Match(text);
        var faults = circuit
            .Faults.Where(f => f.Part.Equals(match.Groups["part"].Value, StringComparison.OrdinalIgnoreCase))
            .ToArray();
        if (!match.Success || faults.Length == 0)
        {
            return null;
        }

        var rest = match.Groups["rest"].Value;
        var ways = Ways.Where(w => rest.Contains(w.Words, StringComparison.OrdinalIgnoreCase)).Select(w => (FailureMode?)w.Mode);
        return new(faults[0].Part, ways.FirstOrDefault(w => faults.Any(f => f.Mode == w)), 1);
    }

    /// <summary>What a note in a timeline says was found: it begins with "found"; null for any other note.</summary>
    public static FoundBefore? ReadNote(string note, Circuit circuit) =>
        Note().Match(note) is { Success: true } match ? Read(match.Groups["what"].Value, circuit) : null;

    [GeneratedRegex(@"^\s*(?<part>[^\s:,.;]+)(?<rest>.*)$", RegexOptions.Singleline)]
    private static partial Regex Shape();

    [GeneratedRegex(@"^\s*found\b[\s:]*(?<what>.+)$", RegexOptions.IgnoreCase | RegexOptions.Singleline)]
    private static partial Regex Note();
}
