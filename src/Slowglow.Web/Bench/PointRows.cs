using Slowglow.Bench.Jobs;
using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Diagnosis;
using Slowglow.Sheets.Readings;
using Slowglow.Web.Desks;

namespace Slowglow.Web.Bench;

/// <summary>Brings together what points should read and what was read.</summary>
public static class PointRows
{
    private const string Weighing = "being weighed";

    /// <summary>Everything measured, newest first, in whatever setup.</summary>
    public static IReadOnlyList<PointRow> Measured(DeskPicture picture)
    {
        var job = picture.Job!;
        var verdicts = picture.Diagnosis?.Value.Readings ?? [];
        return [.. job.Readings.Reverse().Select(r => Row(r, job, verdicts, picture.Expected?.Value ?? []))];
    }

    /// <summary>Every point of the chosen setup that nothing was measured at.</summary>
    public static IReadOnlyList<PointRow> Unmeasured(DeskPicture picture)
    {
        var job = picture.Job!;
        var measured = job
            .Readings.Where(r => r.Reading.Setup.Name == job.Chosen.Name)
            .Select(r => Key(r.Reading.Probe))
            .ToHashSet();
        return
        [
            .. (picture.Expected?.Value ?? [])
                .Where(e => !measured.Contains(Key(e.Probe)))
                .Select(e => new PointRow(e.Probe, e.Kind, e.Nominal, e.Low, e.High, null, null, "")),
        ];
    }

    private static PointRow Row(
        StandingReading measured,
        OpenedJob job,
        IReadOnlyList<ReadingVerdict> verdicts,
        IReadOnlyList<Expectation> expected
    )
    {
        var reading = measured.Reading;
        var other = reading.Setup.Name == job.Chosen.Name ? null : reading.Setup.Name;
        var verdict = verdicts.FirstOrDefault(v => v.Reading.Text == reading.Text && v.Reading.Setup.Name == reading.Setup.Name);
        if (verdict is not null)
        {
            var kind = double.IsFinite(verdict.Nominal) ? AnswerKind.Value : AnswerKind.Overload;
            return new(reading.Probe, kind, verdict.Nominal, verdict.Low, verdict.High, other, measured, verdict.Word);
        }

        var belongs = other is null ? expected.FirstOrDefault(e => Key(e.Probe) == Key(reading.Probe)) : null;
        return belongs is null
            ? new(reading.Probe, AnswerKind.Value, double.NaN, double.NaN, double.NaN, other, measured, Weighing)
            : new(reading.Probe, belongs.Kind, belongs.Nominal, belongs.Low, belongs.High, other, measured, Weighing);
    }

    private static (string Red, string Black, ProbeKind Kind, double Frequency) Key(Probe probe) =>
        (probe.Red, probe.Black, probe.Kind, probe.Frequency);
}
