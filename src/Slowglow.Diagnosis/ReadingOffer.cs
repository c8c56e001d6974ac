using Slowglow.Diagnosis.Next;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis;

/// <summary>Every reading that is worth considering on a unit, and the minutes it takes.</summary>
public sealed class ReadingOffer(Sheet sheet)
{
    private readonly CandidateProbes probes = new(sheet);

    /// <summary>In the order of the sheet.</summary>
    public IReadOnlyList<Probe> In(Setup setup) => probes.For(setup);

    /// <summary>Minutes of work with the change of setup and access; risk is not in it.</summary>
    /// <param name="last">The reading taken before; null at the start, with the unit on the bench as the customer uses it.</param>
    public double Minutes(Probe probe, Setup setup, Reading? last) =>
        new ReadingCost(sheet, last?.Setup ?? Setup.Default, last?.Probe.Kind == ProbeKind.Level, 0).Minutes(probe, setup);
}
