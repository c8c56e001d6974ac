using Slowglow.Circuits;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.RootCauses;

/// <summary>Parts that a reading across them with the power off has shown to be as they ought to be.</summary>
internal static class ProvenGood
{
    private const double AsExpected = 2;

    public static IReadOnlySet<string> Of(IReadOnlyList<ReadingVerdict> verdicts, IEnumerable<Part> parts)
    {
        var good = verdicts.Where(v => v.Reading.Setup.PowerOff && IsGood(v)).Select(v => Ends(v.Reading.Probe)).ToHashSet();
        return parts
            .Where(p => p.Pins.Count == 2 && good.Contains(Ordered(p.Pins[0].Net, p.Pins[1].Net)))
            .Select(p => p.Designator)
            .ToHashSet();
    }

    /// <summary>Overload where overload belongs is left out: an open part reads so too.</summary>
    private static bool IsGood(ReadingVerdict verdict) =>
        verdict.Reading is { Said: MeterSaid.Value, Probe.Kind: ProbeKind.Ohm or ProbeKind.Diode }
        && Math.Abs(verdict.Deviations) <= AsExpected;

    private static (string, string) Ends(Probe probe) => Ordered(probe.Red, probe.Black);

    private static (string, string) Ordered(string a, string b) => string.CompareOrdinal(a, b) <= 0 ? (a, b) : (b, a);
}
