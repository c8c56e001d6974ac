namespace Slowglow.Workshop.Safety;

/// <summary>A record of an electrical safety test. The figures are the technician's.</summary>
/// <param name="Set">Test set by region.</param>
/// <param name="Class">"I" or "II".</param>
/// <param name="LeadSound">Lead, plug and strain relief were looked at and are sound.</param>
/// <param name="FuseRight">The fuse fitted is the one marked.</param>
/// <param name="Instrument">What it was measured with.</param>
/// <param name="CalibratedUntil">Last day its calibration holds; null when not known.</param>
public sealed record SafetyTest(
    string Set,
    string Class,
    IReadOnlyList<SafetyFigure> Figures,
    bool LeadSound,
    bool FuseRight,
    string Instrument,
    DateOnly? CalibratedUntil,
    string Who,
    DateOnly Day
)
{
    /// <summary>Every figure within its limit, lead and fuse right.</summary>
    public bool Passed => Figures.Count > 0 && Figures.All(f => f.Passed) && LeadSound && FuseRight;

    /// <summary>What failed, in words; empty when it passed.</summary>
    public IReadOnlyList<string> Failures =>
        [
            .. Figures.Where(f => !f.Passed).Select(f => f.Test),
            .. LeadSound ? Array.Empty<string>() : ["lead and plug"],
            .. FuseRight ? Array.Empty<string>() : ["fuse"],
        ];

    /// <summary>What keeps it from being a record; empty when nothing does.</summary>
    public IReadOnlyList<Objection> Look() => [.. Wrong()];

    private IEnumerable<Objection> Wrong()
    {
        if (Figures.Count == 0)
        {
            yield return new("No figure was entered.", "What the instrument showed, for every test of the set that applies.");
        }

        if (Figures.Any(f => !double.IsFinite(f.Value) || f.Value < 0 || !double.IsFinite(f.Limit) || f.Limit < 0))
        {
            yield return new("A figure or a limit is below 0.", "0 or more, in the unit beside it.");
        }

        if (string.IsNullOrWhiteSpace(Instrument))
        {
            yield return new("The instrument is missing.", "Type and serial number of what it was measured with.");
        }

        if (CalibratedUntil < Day)
        {
            yield return new(
                $"The calibration ended on {CalibratedUntil:O}.",
                "Measure with an instrument whose calibration holds."
            );
        }
    }
}
