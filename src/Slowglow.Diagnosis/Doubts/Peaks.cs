using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Quantities;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Doubts;

/// <summary>Tells a DC figure that the unit cannot make: beyond what its transformer peaks at and beyond every single fault's world.</summary>
internal sealed class Peaks(Knowledge knowledge, IProgress<double>? progress, CancellationToken cancel)
{
    /// <summary>Only figures beyond this share of the largest healthy volts are looked at.</summary>
    private const double WorthALook = 1.05;

    /// <summary>Mains at its upper end, a light load, a meter: common practice, no source.</summary>
    private const double Room = 1.2;
    private const double RoomOverWorlds = 1.1;

    /// <summary>A sentence that says why the figure cannot be, or null.</summary>
    public string? Refuses(Reading reading)
    {
        var isVolts = reading.Probe.Kind == ProbeKind.Dc && reading.Said is MeterSaid.Value or MeterSaid.Above;
        if (
            !isVolts
            || !(Math.Abs(reading.Value) > WorthALook * knowledge.Answers.Reach)
            || Highest(reading) is not var (peak, name)
        )
        {
            return null;
        }
        var worlds = RoomOverWorlds * HighestOfWorlds(reading);
        if (Math.Abs(reading.Value) < Math.Min(Room * peak, Math.Max(worlds, Room * knowledge.Answers.Reach)))
        {
            return null;
        }
        var (said, top) = (ReadingText(reading), Engineering.Format(worlds / RoomOverWorlds, "V"));
        return Math.Abs(reading.Value) > Room * peak
            ? $"{said} is above the {Engineering.Format(peak, "V")} that {name} peaks at: check the range, the leads and the mains strap; it is left out of the weighing."
            : $"{said} is more than any fault on this drawing can make ({top} at most): check the range, the leads and the drawing; it is left out of the weighing.";
    }

    private static string ReadingText(Reading reading) => $"{reading.Probe.Where} = {Engineering.Format(reading.Value, "V")}";

    /// <summary>Peak of the highest secondary at the setup's mains; null without a mains transformer.</summary>
    private (double Volts, string Name)? Highest(Reading reading)
    {
        var sheet = knowledge.Source.Sheet;
        var mains = (reading.Setup.MainsVolts ?? sheet.Mains.Volts) / sheet.Mains.Volts;
        return sheet
            .Parts.OfType<TransformerPart>()
            .Where(t => !t.IsOutput)
            .SelectMany(t => t.Windings.Where(w => !w.IsPrimary).Select(w => (t, w)))
            .Select(p =>
                ((double Volts, string Name)?)(Math.Sqrt(2) * mains * p.w.SectionVolts.Sum(), $"{p.t.Designator}.{p.w.Name}")
            )
            .OrderByDescending(p => p!.Value.Volts)
            .FirstOrDefault();
    }

    /// <summary>Largest volts that the healthy unit or a single fault puts there.</summary>
    private double HighestOfWorlds(Reading reading)
    {
        knowledge.BlockOf(reading.Setup);
        var column = knowledge.Answers.ColumnOf(reading.Setup, reading.Probe, reading.Meter);
        int[] all = [.. Enumerable.Range(0, knowledge.Hypotheses.WithoutPairs)];
        column.Block.Ensure(all, progress, cancel);
        return all.Select(h => column.Block.Alone(h, column.Index))
            .Where(p => p.HasFigure)
            .Select(p => Math.Abs(p.Mean) + 2 * p.Sd)
            .DefaultIfEmpty(double.PositiveInfinity)
            .Max();
    }
}
