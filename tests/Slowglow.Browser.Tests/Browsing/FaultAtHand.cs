using Microsoft.Extensions.DependencyInjection;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.Questions;
using Slowglow.Bench.Rehearsals;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>A demo job with nothing measured yet, and a unit with a known fault that its readings come from.</summary>
internal sealed record FaultAtHand(int Job, HiddenUnit Unit)
{
    /// <summary>A seed for the tolerances of the unit and the errors of the meter that nothing was tuned on.</summary>
    private const int Seed = 7;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static async Task<FaultAtHand> HideAsync(BenchUnderTest bench, string model, string fault, bool isFuseBlown)
    {
        var open = bench.Services.GetRequiredService<OpenJob>();
        var jobs = await bench.Services.GetRequiredService<ListJobs>().RunAsync(cancel: Cancel);
        var number = jobs.Single(j => j.Unit.Contains(model, StringComparison.Ordinal)).Number;
        var job = (await open.RunAsync(number, Cancel)).Value!;
        var withdraw = bench.Services.GetRequiredService<WithdrawReading>();
        foreach (var reading in job.Readings)
        {
            await withdraw.RunAsync(number, reading.Sequence, Cancel);
        }

        var unit = job.Unit!;
        var read = FaultReader.Read(fault, unit.Circuit);
        Assert.Empty(read.Findings.Select(f => f.Text + " " + f.Remedy));
        var hidden = new HiddenUnits(unit, Seed, null, Cancel).HideThis(read.Value!, isFuseBlown, job.Standing.Complaint);
        return new(number, hidden!);
    }
}
