using Slowglow.Circuits;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Power.Stress;

/// <summary>What every part stands at the worst, over the ways in which a unit is used.</summary>
/// <param name="worlds">The unit.</param>
public sealed class StressQuestion(Worlds worlds)
{
    /// <summary>Less is no ripple worth a line, amperes.</summary>
    private const double LeastRipple = 5e-3;

    /// <summary>Less is nothing that a part would notice.</summary>
    private const double LeastWatts = 1e-3;
    private const double LeastVolts = 0.5;

    private readonly Dictionary<string, Part> parts = worlds.Circuit.Sheet.Parts.ToDictionary(p => p.Designator);

    /// <summary>Situations in which the unit does not settle, so that nothing is said of them.</summary>
    public IReadOnlyList<string> Unsettled { get; private set; } = [];

    /// <summary>Those over their rating first, then by how near they come to it; what has no rating last.</summary>
    public IReadOnlyList<StressRow> Ask(CancellationToken cancel = default)
    {
        List<string> unsettled = [];
        Dictionary<(string, string), StressRow> worst = [];
        foreach (var situation in Situation.Of(worlds.Circuit.Sheet))
        {
            var world = worlds.World(situation.Setup, [], cancel);
            if (!world.Settled)
            {
                unsettled.Add(situation.Name);
                continue;
            }

            Keep(Rows(world, worlds.Stress(situation.Setup, []), situation.Name), worst);
        }

        AtFullSignal(worst, unsettled, cancel);
        Unsettled = unsettled;
        return [.. worst.Values.OrderByDescending(r => double.IsNaN(r.Ratio) ? -1 : r.Ratio).ThenByDescending(r => r.Value)];
    }

    private void AtFullSignal(Dictionary<(string, string), StressRow> worst, List<string> unsettled, CancellationToken cancel)
    {
        var high = Situation.High(worlds.Circuit.Sheet);
        foreach (var path in worlds.Circuit.Sheet.Signals)
        {
            cancel.ThrowIfCancellationRequested();
            var name = Situation.FullSignal(worlds.Circuit.Sheet, path.Name);
            if (worlds.World(high.Setup, [], cancel).FullSignal(path.Name, cancel) is { } full)
            {
                Keep(Rows(full.Supply, full.Parts, name), worst);
            }
            else
            {
                unsettled.Add(name);
            }
        }
    }

    private static void Keep(IEnumerable<StressRow> rows, Dictionary<(string, string), StressRow> worst)
    {
        foreach (var row in rows)
        {
            if (!worst.TryGetValue((row.Part, row.What), out var before) || IsWorse(row, before))
            {
                worst[(row.Part, row.What)] = row;
            }
        }
    }

    /// <summary>By its share of the rating, which is not the same in every situation; what has one goes before what has none.</summary>
    private static bool IsWorse(StressRow row, StressRow before) =>
        double.IsNaN(row.Ratio) != double.IsNaN(before.Ratio) ? double.IsNaN(before.Ratio)
        : double.IsNaN(row.Ratio) ? row.Value > before.Value
        : row.Ratio > before.Ratio;

    private IEnumerable<StressRow> Rows(World world, IReadOnlyList<PartStress> stresses, string situation)
    {
        foreach (var s in stresses)
        {
            foreach (var row in Rows(s, parts[s.Part], situation))
            {
                yield return row;
            }
        }

        foreach (var w in world.WindingCurrents().GroupBy(w => (w.Part, w.Winding)).Select(g => g.MaxBy(w => w.AmpsRms)!))
        {
            if (parts[w.Part] is TransformerPart { IsOutput: false } part)
            {
                yield return Row($"{w.Part} {w.Winding}", part, "current", w.AmpsRms, situation, w.RatedAmps);
            }
        }

        foreach (var c in world.CapacitorCurrents().Where(c => c.AmpsRms > LeastRipple))
        {
            yield return Row(c.Part, parts[c.Part], "ripple current", c.AmpsRms, situation, double.NaN);
        }
    }

    private static StressRow Row(string name, Part part, string what, double amps, string situation, double rated) =>
        new(name, part.Description, what, "A", amps, situation, rated, double.NaN);

    private static IEnumerable<StressRow> Rows(PartStress s, Part part, string situation)
    {
        StressRow Row(string what, string unit, double value, double ratio) =>
            new(
                s.Part,
                part.Description,
                what,
                unit,
                value,
                situation,
                ratio > 0 ? value / ratio : double.NaN,
                NeededRating.For(part, unit, value)
            );

        if (s.Watts > LeastWatts && part is not TransformerPart)
        {
            yield return Row("heat", "W", s.Watts, s.WattsRatio);
        }

        if (s.Volts > LeastVolts && (!double.IsNaN(s.VoltsRatio) || !double.IsNaN(NeededRating.For(part, "V", s.Volts))))
        {
            yield return Row("volts", "V", s.Volts, s.VoltsRatio);
        }

        if (s.AmpsRms > 0 && !double.IsNaN(s.AmpsRatio) && part is not TransformerPart)
        {
            yield return Row("current", "A", s.AmpsRms, s.AmpsRatio);
        }
    }
}
