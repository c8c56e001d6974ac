using System.Text.RegularExpressions;
using Slowglow.Circuits;
using Slowglow.Quantities;
using Slowglow.Sheets;

namespace Slowglow.Bench.Questions;

/// <summary>Reads a fault as a technician says it: "R5 open", "R5 x5", "C4 leaky 470k", "V1 section 2 low emission 40 %".</summary>
public static partial class FaultReader
{
    /// <summary>The fault, or one finding that says what would be right.</summary>
    public static Parsed<Fault> Read(string text, Circuit circuit)
    {
        var words = Spaces().Replace(text.Trim(), " ");
        var match = Shape().Match(words);
        var name = words.Split(' ')[0];
        var known = circuit.Faults.Where(f => f.Part.Equals(name, StringComparison.OrdinalIgnoreCase)).ToArray();
        if (known.Length == 0)
        {
            return Wrong(
                words,
                $"no fault of a part called \"{name}\" can be computed",
                "begin with a designator of the sheet: R5 open"
            );
        }

        if (!match.Success || Mode(match) is not { } mode)
        {
            return Wrong(words, "this is not a way to fail that the program knows", Offer(known));
        }

        var where = match.Groups["where"].Value.Trim();
        where = where.StartsWith("section ", StringComparison.OrdinalIgnoreCase) ? where[8..].Trim() : where;
        var same = known.Where(f => f.Mode == mode && f.Where.Equals(where, StringComparison.OrdinalIgnoreCase)).ToArray();
        if (same.Length == 0)
        {
            return Wrong(words, $"{known[0].Part} does not fail that way", Offer(known));
        }

        return Severity(mode, match) is { } severity
            ? new(same[0] with { Severity = severity }, [])
            : Wrong(words, "how bad the fault is cannot be read", Offer(same));
    }

    private static FailureMode? Mode(Match match) =>
        match.Groups["mode"].Value.ToUpperInvariant() switch
        {
            "OPEN" or "BLOWN" or "BROKEN" => FailureMode.Open,
            "SHORT" or "SHORTED" => FailureMode.Short,
            "LEAKY" => FailureMode.Leaky,
            "X" or "DRIFTED" or "DRIFTED UP" or "DRIFTED UP," or "DRIFTED DOWN" or "DRIFTED DOWN," => FailureMode.Drifted,
            "LOW EMISSION" or "WEAK" => FailureMode.LowEmission,
            "DEAD" => FailureMode.Dead,
            "DRIED" or "DRIED OUT" or "DRIED OUT," => FailureMode.DriedOut,
            "STUCK HIGH" or "OUTPUT STUCK HIGH" => FailureMode.StuckHigh,
            "BAD CONTACT" or "DIRTY" => FailureMode.BadContact,
            "GASSY" => FailureMode.Gassy,
            "WRONG VALUE" or "WRONG VALUE FITTED" or "WRONG VALUE FITTED," => FailureMode.WrongValue,
            "BACKWARDS" or "FITTED BACKWARDS" => FailureMode.Backwards,
            "STUCK LOW" or "OUTPUT STUCK LOW" => FailureMode.StuckLow,
            _ => null,
        };

    /// <summary>Severity as the mode means it; null when it is missing or senseless.</summary>
    private static double? Severity(FailureMode mode, Match match)
    {
        var figure = match.Groups["figure"].Value;
        if (HasNoDegree(mode))
        {
            return figure.Length == 0 ? 0 : null;
        }

        if (!QuantityText.TryRead(figure, out var quantity))
        {
            return null;
        }

        var unit = mode is FailureMode.Leaky or FailureMode.BadContact ? Unit.Ohm : Unit.Percent;
        var most = mode is FailureMode.LowEmission or FailureMode.DriedOut or FailureMode.Gassy ? 1 : 1e12;
        return quantity.Fits(unit) && quantity.Value > 0 && quantity.Value < most ? quantity.Value : null;
    }

    private static bool HasNoDegree(FailureMode mode) =>
        mode
            is FailureMode.Open
                or FailureMode.Short
                or FailureMode.Dead
                or FailureMode.StuckHigh
                or FailureMode.StuckLow
                or FailureMode.Backwards;

    private static string Offer(IEnumerable<Fault> known)
    {
        var examples = known.GroupBy(f => (f.Where, f.Mode)).Select(g => FaultWords.Say(g.First())).Distinct();
        return $"what can be computed: {string.Join("; ", examples)}";
    }

    private static Parsed<Fault> Wrong(string words, string text, string remedy) =>
        new(null, [new(Sheets.Severity.Error, Place.None, $"fault \"{words}\": {text}", remedy)]);

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex(
        """
            ^(?<part>\S+)\s
            (?<where>.*?)\s?
            (?<mode>open|blown|broken|shorted|short|leaky|drifted(?:\ up|\ down)?,?|x|low\ emission|weak|dead|dried(?:\ out)?,?|bad\ contact|dirty|gassy|wrong\ value(?:\ fitted)?,?|(?:fitted\ )?backwards|(?:output\ )?stuck\ (?:high|low))
            (?:\s?(?:(?:to|by)\s)?(?<figure>\S+(?:\s(?:%|[kM]?ohm))?)(?:\stimes)?(?:\s(?:left|the\ drawing's|(?:of\s)?its\svalue|of\sits\scapacitance\sleft))?)?$
            """,
        RegexOptions.IgnoreCase | RegexOptions.IgnorePatternWhitespace
    )]
    private static partial Regex Shape();
}
