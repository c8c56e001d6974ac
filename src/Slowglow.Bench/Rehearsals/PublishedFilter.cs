using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Readings;

namespace Slowglow.Bench.Rehearsals;

/// <summary>The fault lists of the filters that the literature tries its methods on, and the readings taken of them.</summary>
public static class PublishedFilter
{
    /// <summary>Values off by a factor, both ways, on the parts named.</summary>
    public static IReadOnlyList<HiddenFault> Soft(Sheet sheet, IEnumerable<string> parts, params double[] factors) =>
        [.. parts.SelectMany(p => factors.Select(f => Off(sheet.Parts.Single(x => x.Designator == p), f)))];

    /// <summary>Opens and shorts of the parts named.</summary>
    public static IReadOnlyList<HiddenFault> Hard(IEnumerable<string> parts) =>
        [.. parts.SelectMany(p => new[] { FailureMode.Open, FailureMode.Short }.Select(m => Of(new(p, "", m))))];

    /// <summary>What the program can compute of the op-amps named.</summary>
    public static IReadOnlyList<HiddenFault> OpAmps(Circuit circuit, IEnumerable<string> parts) =>
        [.. circuit.Faults.Where(f => parts.Contains(f.Part)).Select(Of)];

    /// <summary>The level at nets, at each frequency.</summary>
    public static IReadOnlyList<Probe> Levels(IEnumerable<string> nets, params double[] hertz) =>
        [.. nets.SelectMany(n => hertz.Select(f => new Probe(n, n, NetTable.Ground, ProbeKind.Level, f)))];

    private static HiddenFault Of(Fault fault) => new(HiddenKind.Single, [fault], null, [fault.Part], fault.ToString());

    private static HiddenFault Off(Part part, double factor)
    {
        Part fitted = part switch
        {
            ResistorPart r => r with { Ohms = r.Ohms * factor },
            CapacitorPart c => c with { Farads = c.Farads * factor },
            _ => part,
        };
        return new(
            HiddenKind.Single,
            [],
            fitted,
            [part.Designator],
            FormattableString.Invariant($"{part.Designator} x {factor:0.##}")
        );
    }
}
