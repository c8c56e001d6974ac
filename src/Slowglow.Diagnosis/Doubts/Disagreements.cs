using Slowglow.Diagnosis.Likelihood;
using Slowglow.Diagnosis.Source;
using Slowglow.Diagnosis.Suspects;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Doubts;

/// <summary>Two readings of one point under one setup that cannot both be right.</summary>
internal static class Disagreements
{
    /// <summary>Two meters, two moments, mains that wanders: readings this far apart may still both be true. Common practice, no source.</summary>
    private const double Share = 0.08;

    /// <summary>Standard deviations of both meters together.</summary>
    private const double Widths = 4;

    public static void Find(IReadOnlyList<Reading> readings, HashSet<Reading> aside, List<string> doubts)
    {
        foreach (var same in readings.GroupBy(Key).Where(g => g.Count() > 1))
        {
            Reading[] taken = [.. same];
            for (var i = 1; i < taken.Length; i++)
            {
                var earlier = taken.Take(i).FirstOrDefault(r => Clash(r, taken[i]));
                if (earlier is not null && aside.Add(taken[i]))
                {
                    aside.Add(earlier);
                    doubts.Add(Say(earlier, taken[i]));
                }
            }
        }
    }

    /// <summary>A heater that glows and is dark, a part that is hot and cool, burnt and nothing to be seen.</summary>
    public static void FindLooks(IReadOnlyList<Reading> looks, HashSet<Reading> aside, List<string> doubts)
    {
        foreach (var same in looks.GroupBy(l => (l.Probe.Where, SetupKey.Of(l.Setup))))
        {
            foreach (
                var (a, b) in new[]
                {
                    (Look.Lit, Look.Dark),
                    (Look.Hot, Look.Cool),
                    (Look.Burnt, Look.Fine),
                    (Look.Bulged, Look.Fine),
                }
            )
            {
                if (same.FirstOrDefault(l => l.Look == a) is { } first && same.FirstOrDefault(l => l.Look == b) is { } second)
                {
                    aside.Add(first);
                    aside.Add(second);
                    doubts.Add(
                        $"{same.Key.Where} was found {first.Shown} and {second.Shown} with the bench standing the same way: look again, and call one a mistake."
                    );
                }
            }
        }
    }

    private static string Say(Reading first, Reading second) =>
        $"{second.Probe.Where} {second.Probe.KindText} was read as {ReadingWords.Value(first)} and as {ReadingWords.Value(second)} with the bench "
        + $"standing the same way: one is a slip, or the point is unstable. Read it again, then call one a mistake or write {second.Probe.Where} = unstable.";

    private static (string, string, string, ProbeKind, double) Key(Reading r) =>
        (SetupKey.Of(r.Setup), r.Probe.Red, r.Probe.Black, r.Probe.Kind, r.Probe.Frequency);

    private static bool Clash(Reading a, Reading b) =>
        (a.Said, b.Said) switch
        {
            (MeterSaid.Unstable, _) or (_, MeterSaid.Unstable) => false,
            (MeterSaid.Value, MeterSaid.Value) => Apart(a, b),
            (MeterSaid.Value, MeterSaid.Above) => a.Value < b.Value && Apart(a, b),
            (MeterSaid.Value, MeterSaid.Below) => a.Value > b.Value && Apart(a, b),
            (MeterSaid.Above or MeterSaid.Below, MeterSaid.Value) => Clash(b, a),
            (MeterSaid.Above, MeterSaid.Below) => a.Value > b.Value,
            (MeterSaid.Below, MeterSaid.Above) => b.Value > a.Value,
            (MeterSaid.Overload, MeterSaid.Value or MeterSaid.Below) => true,
            (MeterSaid.Value or MeterSaid.Below, MeterSaid.Overload) => true,
            (MeterSaid.Signal, MeterSaid.NoSignal) or (MeterSaid.NoSignal, MeterSaid.Signal) => true,
            _ => false,
        };

    private static bool Apart(Reading a, Reading b)
    {
        var meter = Math.Sqrt(Variance(a) + Variance(b));
        var larger = Math.Max(Math.Abs(a.Value), Math.Abs(b.Value));
        return Math.Abs(a.Value - b.Value) > Widths * meter + Share * larger;
    }

    private static double Variance(Reading r) =>
        Math.Pow(ErrorModel.MeterError(r.Probe, r.Meter) * r.Value, 2)
        + Math.Pow(ErrorModel.AbsoluteError(r.Probe) + ErrorModel.Resolution(Math.Abs(r.Value), r.Meter), 2);
}
