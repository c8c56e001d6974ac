using Slowglow.Bench.Jobs;
using Slowglow.Web.Hosting;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Web.Desks;

/// <summary>The job that the first page opens on.</summary>
public sealed class FirstJob(BenchOptions options, ListJobs listJobs)
{
    /// <summary>The one asked for, else the lowest number on the bench, else the lowest; null when the job book is empty.</summary>
    public async Task<int?> NumberAsync(CancellationToken cancel = default)
    {
        if (options.Job is { } asked)
        {
            return asked;
        }

        var jobs = await listJobs.RunAsync(cancel);
        var onBench = JobStateWords.Say(JobState.OnTheBench);
        return (jobs.FirstOrDefault(j => j.State == onBench) ?? jobs.FirstOrDefault())?.Number;
    }
}
