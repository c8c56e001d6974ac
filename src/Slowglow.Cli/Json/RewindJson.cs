using Slowglow.Cli.Desk;
using Slowglow.Power;
using Slowglow.Power.Rewinding;

namespace Slowglow.Cli.Json;

/// <summary>A transformer specified for a winder; base units, lengths in millimetres, wire in millimetres and AWG.</summary>
internal sealed record RewindJson(
    string Part,
    bool Feasible,
    string? Refusal,
    string? SmallestCore,
    RewindCoreJson Core,
    IReadOnlyList<RewindDutyJson> Duties,
    IReadOnlyList<RewindWindingJson> Windings,
    IReadOnlyList<RewindLimitJson> Limits,
    IReadOnlyList<RewindRailJson> Rails,
    IReadOnlyList<RewindStrapJson> Straps,
    IReadOnlyList<RewindFlashJson> FlashTests,
    IReadOnlyList<RewindCheckJson> Check,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<FindingJson> Findings
)
{
    public static RewindJson From(RewindAnswer a, IReadOnlyList<WoundCheckRow> form, IReadOnlyList<DocumentFinding> findings) =>
        new(
            a.Part,
            a.Refusal is null,
            a.Refusal,
            a.Refusal is null ? a.Design.Core.ToString() : a.Larger?.Core.ToString(),
            RewindCoreJson.From(a.Design),
            [
                .. a.Duties.Select(d => new RewindDutyJson(
                    d.Name,
                    d.OffLoadVolts,
                    d.LoadedVolts,
                    d.AmpsRms,
                    d.AmpsDc,
                    d.AmpsCrest,
                    d.VoltAmperes,
                    d.RatedAmps
                )),
            ],
            [.. a.Design.Windings.Select(RewindWindingJson.From)],
            [.. a.Design.Checks.Select(c => new RewindLimitJson(c.What, c.Value, c.Most, c.Unit, c.Holds))],
            [.. a.Rails.Select(r => new RewindRailJson(r.Winding, r.Where, r.IsAc ? "ac" : "dc", r.Asked, r.Given))],
            [.. (a.Primary?.Straps ?? []).Select(s => new RewindStrapJson(s.Volts, s.InSeries, s.FirstTap, s.SecondTap))],
            [.. a.Tests.Select(t => new RewindFlashJson(t.Between, t.VoltsRms, t.Seconds, t.Source))],
            [.. form.Select(r => new RewindCheckJson(r.What, r.Expected, r.Low, r.High, r.Unit, r.Measured, r.Passes))],
            a.Notes,
            Power.Cautions.Always,
            [.. findings.Select(FindingJson.From)]
        );
}
