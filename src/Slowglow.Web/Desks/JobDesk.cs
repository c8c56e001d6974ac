using Microsoft.Extensions.Logging;
using Slowglow.Bench.Jobs;

namespace Slowglow.Web.Desks;

/// <summary>
/// One job on the bench, shared by every page that shows it. Evidence that comes in while suspects are being weighed
/// stops that weighing and starts it anew; what is shown meanwhile is marked as stale.
/// </summary>
public sealed class JobDesk(int number, OpenJob open, TimeProvider clock, ILogger<JobDesk> log)
{
    private readonly Lock gate = new();
    private readonly SemaphoreSlim reading = new(1, 1);
    private CancellationTokenSource running = new();
    private Task solving = Task.CompletedTask;
    private volatile DeskPicture? picture;

    /// <summary>Raised on any thread after <see cref="Picture"/> changed.</summary>
    public event Action? Changed;

    /// <summary>Null until the job has been read.</summary>
    public DeskPicture? Picture => picture;

    /// <summary>Done when nothing is being worked out any more.</summary>
    public Task Settled
    {
        get
        {
            lock (gate)
            {
                return solving;
            }
        }
    }

    /// <summary>Done when what the next reading will ask for is worked out; a reading that comes sooner is weighed all the same.</summary>
    public Task Foreseen { get; private set; } = Task.CompletedTask;

    /// <summary>Reads the job once; later calls return at once.</summary>
    public Task OpenAsync() => picture is null ? ReloadAsync() : Task.CompletedTask;

    /// <summary>Reads the job from the disk and works out what has changed.</summary>
    public async Task ReloadAsync()
    {
        await reading.WaitAsync();
        try
        {
            var opened = await open.RunAsync(number);
            Show(p => (p ?? new DeskPicture(null, [])) with { Job = opened.Value, Findings = opened.Findings });
        }
        finally
        {
            reading.Release();
        }

        Solve();
    }

    /// <summary>Stops whatever is being worked out; nothing new begins until the job is read again.</summary>
    internal void Stop()
    {
        lock (gate)
        {
            running.Cancel();
        }
    }

    internal void Show(Func<DeskPicture?, DeskPicture> change)
    {
        lock (gate)
        {
            picture = change(picture);
        }

        Changed?.Invoke();
    }

    private void Solve()
    {
        lock (gate)
        {
            running.Cancel();
            running = new CancellationTokenSource();
            var (before, cancel) = (solving, running.Token);
            solving = Task.Run(async () =>
            {
                await before;
                SolveNow(cancel);
                Foreseen = Task.Run(() => Foresee(cancel), CancellationToken.None);
            });
        }
    }

    private void Foresee(CancellationToken cancel)
    {
        try
        {
            new DeskWork(this, clock, cancel).Foresee();
        }
        catch (OperationCanceledException)
        {
            // A reading has come in: it is weighed with what was solved so far.
        }
        catch (Exception e)
        {
            // Nobody waits for this: the reading itself will say what is wrong.
            log.LogError(e, "Job {Number}: what the next reading will ask for could not be worked out.", number);
        }
    }

    private void SolveNow(CancellationToken cancel)
    {
        try
        {
            new DeskWork(this, clock, cancel).Run();
        }
        catch (OperationCanceledException)
        {
            // Newer evidence has come in: the work that follows this one takes it up.
        }
        catch (Exception e)
        {
            // The page must survive a fault of the program; the readings are on the disk.
            log.LogError(e, "Job {Number} could not be worked out.", number);
            Show(p =>
                p! with
                {
                    Trouble = "This could not be worked out, through a fault of the program. The readings are stored.",
                }
            );
        }
        finally
        {
            if (!cancel.IsCancellationRequested)
            {
                Show(p => p! with { Work = null });
            }
        }
    }
}
