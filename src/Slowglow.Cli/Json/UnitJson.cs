using Slowglow.Bench.Questions;

namespace Slowglow.Cli.Json;

/// <summary>What the whole unit stands, and what would make its figures mislead.</summary>
internal sealed record UnitJson(
    IReadOnlyList<WindingJson> Windings,
    IReadOnlyList<RippleJson> RippleCurrents,
    IReadOnlyList<OverRatingJson> OverRatings,
    int OtherStates,
    bool Stands,
    IReadOnlyList<ThermalJson> Thermal,
    IReadOnlyList<string> Words
)
{
    public static UnitJson From(UnitConcerns c) =>
        new(
            [.. c.Windings.Select(w => new WindingJson(w.Part, w.Winding, w.FromPin, w.ToPin, w.AmpsRms, w.AmpsDc, w.RatedAmps))],
            [.. c.Ripple.Select(r => new RippleJson(r.Part, r.AmpsRms))],
            [.. c.OverRatings.Select(o => new OverRatingJson(o.Part, o.Quantity, o.Value, o.Ratio))],
            c.OtherStates.Count,
            c.Stands,
            [.. c.ThermalLoops.Select(t => new ThermalJson(t.Parts, t.StandingAmps, t.Watts, t.JunctionGain, t.WholeGain))],
            ConcernWords.Say(c)
        );
}
