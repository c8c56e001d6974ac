using Slowglow.Circuits;
using Slowglow.Power.Rewinding;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Power.Overload;

/// <summary>Which other faults overload a part: what to look for before a new one goes in.</summary>
/// <param name="worlds">The unit.</param>
public sealed class OverloadQuestion(Worlds worlds)
{
    /// <summary>Less over the rating, or over what is healthy where there is none, kills nothing (common practice, no source).</summary>
    private const double OverRating = 1.15;
    private const double OverHealthy = 2;

    private Sheet Sheet => worlds.Circuit.Sheet;

    /// <summary>Worst first; one line for each culprit and failure.</summary>
    public IReadOnlyList<OverloadCause> Ask(Part part, CancellationToken cancel = default)
    {
        Fault[] faults = [.. worlds.Circuit.Faults.Where(f => f.Part != part.Designator && IsHard(f))];
        var inlet = new Probe(Probe.Inlet, Probe.Inlet, Probe.Inlet, ProbeKind.Ac);
        worlds.Ask(
            Setup.Default,
            [
                [],
                .. faults.Select(f => (IReadOnlyList<Fault>)[f]),
            ],
            [inlet],
            MeterClass.Handheld,
            cancel: cancel
        );
        var heat = part is TransformerPart mains ? Heat(mains, cancel) : null;
        var healthy = Loads(part, [], cancel);
        List<OverloadCause> causes = [];
        foreach (var fault in faults)
        {
            cancel.ThrowIfCancellationRequested();
            var worst = Loads(part, [fault], cancel)
                .Select(l => (Load: l, Was: healthy.FirstOrDefault(h => h.What == l.What)))
                .Where(l => l.Was is not null && IsOver(l.Load, l.Was))
                .OrderByDescending(l => Over(l.Load, l.Was!))
                .FirstOrDefault();
            if (worst.Load is not null)
            {
                causes.Add(Cause(part, fault, worst.Load, worst.Was!, heat, cancel));
            }
        }

        return [.. causes.OrderByDescending(c => c.Ratio)];
    }

    private static bool IsHard(Fault f) =>
        f.Mode is FailureMode.Short or FailureMode.Open or FailureMode.StuckHigh or FailureMode.StuckLow;

    /// <summary>One thing that a part stands.</summary>
    private sealed record Load(
        string What,
        string Unit,
        double Value,
        double Rated,
        string Winding,
        double Watts,
        double AllWatts
    );

    private List<Load> Loads(Part part, IReadOnlyList<Fault> faults, CancellationToken cancel)
    {
        var world = worlds.World(Setup.Default, faults, cancel);
        var stress = worlds.Stress(Setup.Default, faults).FirstOrDefault(s => s.Part == part.Designator);
        if (!world.Settled || stress is null)
        {
            return [];
        }

        if (part is TransformerPart transformer)
        {
            return
            [
                .. world
                    .WindingCurrents()
                    .Where(w => w.Part == part.Designator)
                    .GroupBy(w => w.Winding)
                    .Select(g => g.MaxBy(w => w.AmpsRms)!)
                    .Select(w =>
                    {
                        var ohms = transformer.Windings.Single(x => x.Name == w.Winding).SectionOhms.Sum();
                        return new Load(
                            $"current in {w.Winding}",
                            "A",
                            w.AmpsRms,
                            w.RatedAmps,
                            w.Winding,
                            w.AmpsRms * w.AmpsRms * ohms,
                            stress.Watts
                        );
                    }),
            ];
        }

        // A fuse knows current alone: its own milliwatts grow with the square of it and say nothing more.
        Load Of(string what, string unit, double value, double ratio) =>
            new(what, unit, value, ratio > 0 ? value / ratio : double.NaN, "", stress.Watts, stress.Watts);
        return
        [
            .. new[]
            {
                Of("heat", "W", stress.Watts, stress.WattsRatio),
                Of("volts", "V", stress.Volts, stress.VoltsRatio),
                Of("current", "A", stress.AmpsRms, stress.AmpsRatio),
            }
                .Where(l => part is not FusePart || l.What == "current")
                .Where(l => double.IsFinite(l.Value) && l.Value > 0),
        ];
    }

    private static double Over(Load now, Load was) => double.IsNaN(now.Rated) ? now.Value / was.Value : now.Value / now.Rated;

    private static bool IsOver(Load now, Load was)
    {
        var grown = now.Value / Math.Max(was.Value, 1e-9);
        return double.IsNaN(now.Rated) ? grown > OverHealthy : now.Value > OverRating * now.Rated && grown > OverRating;
    }

    private OverloadCause Cause(Part part, Fault fault, Load now, Load was, WindingHeat? heat, CancellationToken cancel)
    {
        var seconds =
            part is FusePart fuse ? FuseTime.Longest(now.Value / now.Rated, fuse.Speed)
            : heat is not null ? heat.SecondsToRuin(now.Winding, now.Watts, now.AllWatts)
            : double.NaN;
        var cleared =
            part is FusePart ? null : ClearedBy(fault, double.IsNaN(seconds) ? double.PositiveInfinity : seconds, cancel);
        return new(fault.Part, FaultWords.Say(fault), now.What, now.Unit, now.Value, was.Value, Over(now, was), seconds, cleared);
    }

    /// <summary>The fuse of the unit that opens first in that world, if it does so in time.</summary>
    private string? ClearedBy(Fault fault, double seconds, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        var fuses = Sheet.Parts.OfType<FusePart>().ToDictionary(f => f.Designator);
        return worlds
            .Stress(Setup.Default, [fault])
            .Where(s => fuses.ContainsKey(s.Part))
            .Select(s => (s.Part, Time: FuseTime.Longest(s.AmpsRms / fuses[s.Part].RatedAmps, fuses[s.Part].Speed)))
            .Where(s => double.IsFinite(s.Time) && s.Time < seconds)
            .OrderBy(s => s.Time)
            .Select(s => s.Part)
            .FirstOrDefault();
    }

    /// <summary>Copper and iron of a transformer for the same duty; null when there is no healthy world to take the duty from.</summary>
    private WindingHeat? Heat(TransformerPart part, CancellationToken cancel)
    {
        var duties = TransformerInCircuit.With(Sheet, part)?.Duties(cancel) ?? [];
        if (duties.Count == 0)
        {
            return null;
        }

        var needs = duties.Select(d => new WindingNeed(
            d.Name,
            [d.IsPrimary ? d.OffLoadVolts : d.LoadedVolts],
            d.IsPrimary ? double.NaN : Math.Max(d.DesignAmps, 1e-3),
            d.AmpsRms,
            d.IsPrimary
        ));
        var design = TransformerDesigner.Smallest(new TransformerNeed([.. needs], Sheet.Mains.Frequency), new DesignLimits());
        return design is null ? null : new WindingHeat(design);
    }
}
