using Slowglow.Bench.Jobs;
using Slowglow.Bench.Questions;
using Slowglow.Diagnosis;

namespace Slowglow.Web.Desks;

/// <summary>Works out whatever a desk's picture lacks: expectations, then suspects and beside them the drawing, then levels. Each appears as soon as it is there.</summary>
internal sealed class DeskWork(JobDesk desk, TimeProvider clock, CancellationToken cancel)
{
    private static readonly TimeSpan ShowEvery = TimeSpan.FromMilliseconds(200);
    private long lastShown;

    public void Run()
    {
        if (desk.Picture is not { Job: { Unit: { } unit } job } picture)
        {
            return;
        }

        desk.Show(p => p! with { Trouble = null });
        var expectedFor = DeskPicture.ExpectedFor(job);
        if (picture.Expected?.For != expectedFor)
        {
            var expected = Work(
                "what every point should read",
                expectedFor,
                _ => new ExpectReadings(unit).Run(job.Chosen, cancel)
            );
            desk.Show(p => p! with { Expected = expected });
        }

        var drawing = DrawBeside(unit, job, picture);
        try
        {
            Weigh(unit, job, picture);
            CompareLevels(unit);
        }
        finally
        {
            // Also when newer evidence cut the weighing short: two drawings of one job at once would be one too many.
            ((IAsyncResult)drawing).AsyncWaitHandle.WaitOne();
        }

        drawing.GetAwaiter().GetResult();
    }

    /// <summary>What the readings proposed will ask for, while somebody takes them: nobody waits for it.</summary>
    public void Foresee()
    {
        if (desk.Picture is { Job.Unit: { } unit, Diagnosis.Value.Next: var next })
        {
            unit.Diagnostician.Foresee(next, cancel);
        }
    }

    /// <summary>The drawing needs seconds and the suspects nothing of it: it is laid out on another core while they are weighed.</summary>
    private Task DrawBeside(BenchUnit unit, OpenedJob job, DeskPicture picture)
    {
        if (picture.Layout is { } drawn && drawn.Sheet == unit.Sheet && drawn.Style == job.Style)
        {
            return Task.CompletedTask;
        }

        desk.Show(p => p! with { Layout = null });
        return Task.Run(
            () =>
            {
                var layout = new DrawUnit(unit).LayOut(job.Style, cancel);
                cancel.ThrowIfCancellationRequested();
                desk.Show(p => p! with { Layout = layout });
            },
            cancel
        );
    }

    private void Weigh(BenchUnit unit, OpenedJob job, DeskPicture picture)
    {
        var diagnosisFor = DeskPicture.DiagnosisFor(job);
        if (picture.Diagnosis?.For != diagnosisFor)
        {
            var diagnosis = Work(
                "the suspects",
                diagnosisFor,
                progress => unit.Diagnostician.Diagnose(job.Evidence, progress, cancel)
            );
            desk.Show(p => p! with { Diagnosis = diagnosis });
        }
    }

    private void CompareLevels(BenchUnit unit)
    {
        var diagnosis = desk.Picture?.Diagnosis?.Value;
        var levelsFor = DeskPicture.LevelsFor(diagnosis);
        if (desk.Picture?.Levels?.For == levelsFor)
        {
            return;
        }

        var leading = diagnosis?.Suspects.FirstOrDefault();
        var levels = Work(
            "levels and headroom",
            levelsFor,
            _ => leading is null ? null : new CompareLevels(unit).Run(leading.Fault, cancel)
        );
        desk.Show(p => p! with { Levels = levels });
    }

    private Solved<T> Work<T>(string what, string solvedFor, Func<IProgress<double>, T> work)
    {
        cancel.ThrowIfCancellationRequested();
        var since = clock.GetUtcNow();
        var start = clock.GetTimestamp();
        desk.Show(p => p! with { Work = new(what, double.NaN, since) });
        var value = work(new StepProgress(fraction => ShowProgress(what, fraction, since)));
        cancel.ThrowIfCancellationRequested();
        return new(value, solvedFor, clock.GetElapsedTime(start));
    }

    private void ShowProgress(string what, double fraction, DateTimeOffset since)
    {
        var last = Interlocked.Read(ref lastShown);
        if (
            clock.GetElapsedTime(last) >= ShowEvery
            && Interlocked.CompareExchange(ref lastShown, clock.GetTimestamp(), last) == last
        )
        {
            cancel.ThrowIfCancellationRequested();
            desk.Show(p => p! with { Work = new(what, fraction, since) });
        }
    }
}
