using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;
using Slowglow.Bench.Jobs;

namespace Slowglow.Web.Desks;

/// <summary>Every job that a page has shown since the program started.</summary>
public sealed class JobDesks : IDisposable
{
    private readonly ConcurrentDictionary<int, JobDesk> desks = new();
    private readonly OpenJob open;
    private readonly JobNews news;
    private readonly TimeProvider clock;
    private readonly ILoggerFactory logs;

    public JobDesks(OpenJob open, JobNews news, TimeProvider clock, ILoggerFactory logs)
    {
        this.open = open;
        this.news = news;
        this.clock = clock;
        this.logs = logs;
        news.Changed += Reload;
        news.SettingsChanged += ReloadAll;
    }

    /// <summary>The desk of that job, whether or not there is such a job.</summary>
    public JobDesk Of(int number) => desks.GetOrAdd(number, n => new JobDesk(n, open, clock, logs.CreateLogger<JobDesk>()));

    public void Dispose()
    {
        news.Changed -= Reload;
        news.SettingsChanged -= ReloadAll;
        foreach (var desk in desks.Values)
        {
            desk.Stop();
        }
    }

    private void Reload(int number)
    {
        if (desks.TryGetValue(number, out var desk))
        {
            _ = ReloadAsync(desk, number);
        }
    }

    /// <summary>Some of what the owner settles shows on the bench: how a drawing looks.</summary>
    private void ReloadAll()
    {
        foreach (var number in desks.Keys)
        {
            Reload(number);
        }
    }

    private async Task ReloadAsync(JobDesk desk, int number)
    {
        try
        {
            await desk.ReloadAsync();
        }
        catch (Exception e)
        {
            // Nobody awaits this: what is on the page stays, and the next entry tries again.
            logs.CreateLogger<JobDesks>().LogError(e, "Job {Number} could not be read again.", number);
        }
    }
}
