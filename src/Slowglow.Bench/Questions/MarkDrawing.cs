using Slowglow.Bench.Jobs;
using Slowglow.Diagnosis;
using Slowglow.Drawing;
using Slowglow.Quantities;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;

namespace Slowglow.Bench.Questions;

/// <summary>What the drawing of a job carries: expected and measured figures, shares of suspicion, the next reading.</summary>
public static class MarkDrawing
{
    /// <summary>A reading within this share of what belongs there is as good as none: dead.</summary>
    private const double DeadShare = 0.05;

    /// <summary>Volts below which nothing belongs there anyway.</summary>
    private const double WorthCallingDead = 0.5;

    /// <param name="expected">Of the chosen setup; empty while it is being worked out.</param>
    /// <param name="diagnosis">Null while suspects are being weighed for the first time.</param>
    public static DrawingFigures Of(OpenedJob job, IReadOnlyList<Expectation> expected, DiagnosisResult? diagnosis)
    {
        var measured = Measured(job);
        return new DrawingFigures
        {
            Points = [.. DrawUnit.Points(expected).Select(p => With(p, measured.GetValueOrDefault(p.Net)))],
            Suspicion = diagnosis is null ? new Dictionary<string, double>() : Suspicion(diagnosis.Suspects),
            Next = diagnosis?.Next.FirstOrDefault() is { } next ? Mark(next, job, expected) : null,
        };
    }

    /// <summary>Share of suspicion by designator. A group that nothing tells apart shares what it has.</summary>
    public static IReadOnlyDictionary<string, double> Suspicion(IReadOnlyList<Suspect> suspects)
    {
        var shares = new Dictionary<string, double>();
        foreach (var suspect in suspects)
        {
            IReadOnlyList<string> parts = suspect.Group.Count > 0 ? suspect.Group : [suspect.Part];
            // Two faults at once are both to be replaced: each has the whole share.
            var each = suspect.Second is null ? suspect.Probability / parts.Count : suspect.Probability;
            foreach (var part in parts)
            {
                shares[part] = shares.GetValueOrDefault(part) + each;
            }
        }

        return shares;
    }

    /// <summary>The latest dc reading against chassis of each net, in the setup that the bench stands in.</summary>
    private static Dictionary<string, Reading> Measured(OpenedJob job) =>
        job
            .Readings.SelectMany(r => r.Reading.Each())
            .Where(r =>
                r.Setup.Name == job.Chosen.Name
                && r is { IsMistake: false, Probe: { Kind: ProbeKind.Dc, Black: NetTable.Ground, IsInlet: false } }
            )
            .GroupBy(r => r.Probe.Red)
            .ToDictionary(g => g.Key, g => g.Last());

    private static PointFigure With(PointFigure point, Reading? reading) =>
        reading is null
            ? point
            : point with
            {
                Measured = reading.Shown ?? Engineering.Format(reading.Value, reading.Probe.Unit),
                Mark = Compare(reading, point),
            };

    private static ReadingMark? Compare(Reading reading, PointFigure point) =>
        reading.Said switch
        {
            MeterSaid.Overload or MeterSaid.Above => ReadingMark.High,
            MeterSaid.Unstable => null,
            _ when !double.IsFinite(reading.Value) || !double.IsFinite(point.Low) => null,
            _ when Math.Abs(point.Nominal) > WorthCallingDead
                    && Math.Abs(reading.Value) < DeadShare * Math.Min(Math.Abs(point.Low), Math.Abs(point.High)) =>
                ReadingMark.Dead,
            _ when reading.Value < point.Low => ReadingMark.Low,
            _ when reading.Value > point.High => ReadingMark.High,
            _ => ReadingMark.InBand,
        };

    private static NextMark Mark(NextReading next, OpenedJob job, IReadOnlyList<Expectation> expected)
    {
        var probe = next.Probe;
        var there = next.Setup.Name == job.Chosen.Name ? expected.FirstOrDefault(e => e.Probe == probe) : null;
        var most = there is null ? double.NaN : Math.Max(Math.Abs(there.Low), Math.Abs(there.High));
        var range = MeterRange.Say(probe, most);
        return new NextMark(
            [.. new[] { probe.Red, probe.Black }.Where(n => n is not (NetTable.Ground or Probe.Inlet))],
            next.Setup.Name == job.Chosen.Name ? range : $"{range}, on {next.Setup.Name}",
            next.Risk is "live HT" or "live mains" ? next.Risk : null
        );
    }
}
