using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.Keeping;
using Slowglow.Workshop.Shop;

namespace Slowglow.Web.Hosting;

/// <summary>Makes the day's backup: at the start, and whenever a new day has begun.</summary>
/// <param name="folder">Where backups go.</param>
internal sealed class NightWork(
    NightlyBackups backups,
    ReadSettings settings,
    TimeProvider clock,
    ILogger<NightWork> log,
    BackupFolder folder
) : BackgroundService
{
    private static readonly TimeSpan Between = TimeSpan.FromMinutes(30);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        while (!stoppingToken.IsCancellationRequested)
        {
            try
            {
                var rules = (await settings.RunAsync(stoppingToken)).Rules ?? ExampleRules.Rules;
                foreach (var finding in await backups.RunAsync(folder.Path, rules.BackupsKept, stoppingToken))
                {
                    log.LogError("{Text} {Remedy}", finding.Text, finding.Remedy);
                }

                await Task.Delay(Between, clock, stoppingToken);
            }
            catch (OperationCanceledException)
            {
                return;
            }
            catch (Exception e)
            {
                // A backup that fails must not take the page with it; the next half hour tries again.
                log.LogError(e, "The day's backup could not be made.");
                await Task.Delay(Between, clock, CancellationToken.None)
                    .WaitAsync(stoppingToken)
                    .ContinueWith(_ => { }, TaskScheduler.Default);
            }
        }
    }
}
