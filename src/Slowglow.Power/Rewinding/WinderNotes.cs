using System.Globalization;
using Slowglow.Quantities;

namespace Slowglow.Power.Rewinding;

/// <summary>What a winder wants to be told besides the figures, in sentences.</summary>
internal static class WinderNotes
{
    /// <summary>Lead-out wire carries this density at most (common practice, no source).</summary>
    private const double LeadDensity = 4;

    public static IReadOnlyList<string> Of(WoundDesign design, IReadOnlyList<WindingDuty> duties, RewindRequest request)
    {
        var l = design.Core.Lamination;
        List<string> notes =
        [
            Say(
                $"Iron {l.OutlineWidth:0.#} by {l.OutlineHeight:0.#} mm, stack {design.Core.Stack:0.#} mm; with the coil about {design.Core.Stack + (2 * l.WindowWidth):0} mm deep. Laminations interleaved one by one, clamped, no loose sheet."
            ),
            "Fix it as the old one was: upright, flat or through the chassis; give the distance of the holes, and keep the old clamps where they are sound.",
            "Primary nearest the tongue, three layers of film over it; start and finish of every winding marked, all wound the same way round.",
        ];
        foreach (var winding in design.Windings)
        {
            var section = Math.Max(winding.Amps / LeadDensity, 0.2);
            notes.Add(
                Say(
                    $"Leads of {winding.Name}: flexible, at least {section:0.##} mm², insulation for {LeadVolts(winding):0} V, each end named as on the drawing."
                )
            );
        }

        notes.AddRange(design.Windings.Select(w => FreeVolts(w, duties)).OfType<string>());
        foreach (var duty in duties.Where(d => !d.IsPrimary && Math.Abs(d.AmpsDc) > 0.1 * d.AmpsRms))
        {
            notes.Add(
                $"{duty.Name} carries {Engineering.Format(Math.Abs(duty.AmpsDc), "A")} of direct current, as behind a half-wave rectifier: it magnetises the core, so keep the flux density low."
            );
        }

        notes.AddRange(request.Measured.Wire.Select(w => OldWire(w.Key, w.Value, duties)).OfType<string>());
        return notes;
    }

    private static double LeadVolts(WoundWinding winding) =>
        winding.Need.IsPrimary ? 300 : Math.Max(300, Math.Ceiling(winding.OffLoadVolts * 2 / 100) * 100);

    /// <summary>A softer winding stands higher while nothing draws on it yet.</summary>
    private static string? FreeVolts(WoundWinding winding, IReadOnlyList<WindingDuty> duties) =>
        duties.FirstOrDefault(d => d.Name == winding.Name && !d.IsPrimary) is { } old
        && winding.OffLoadVolts > 1.04 * old.OffLoadVolts
            ? $"With nothing drawn {winding.Name} stands at {Engineering.Format(winding.OffLoadVolts, "V")} where the old one gave {Engineering.Format(old.OffLoadVolts, "V")}: see that the reservoirs take its crest, {Engineering.Format(winding.OffLoadVolts * Math.Sqrt(2), "V")}, at switch-on."
            : null;

    private static string? OldWire(string name, double overall, IReadOnlyList<WindingDuty> duties)
    {
        var wire = WireSize.UnderEnamel(overall);
        return duties.FirstOrDefault(d => d.Name == name) is not { } duty
            ? null
            : Say(
                $"The old {name} was wound with {wire.BareMillimetres:0.000} mm of copper, about AWG {wire.NearestGauge}: {duty.AmpsRms / wire.SquareMillimetres:0.0} A/mm² in this circuit."
            );
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
