using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs.History;
using Slowglow.Bench.Questions;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Storage;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Jobs;

/// <summary>Lays a job on the bench.</summary>
public sealed class OpenJob(IDbContextFactory<ShopDatabase> shop, BenchUnits units)
{
    /// <summary>The job as its timeline leaves it; value null, with a finding, when there is none of that number.</summary>
    public async Task<Parsed<OpenedJob>> RunAsync(int number, CancellationToken cancel = default)
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        var job = await database
            .Jobs.AsNoTracking()
            .Include(j => j.Customer)
            .Include(j => j.Sheet)
            .Include(j => j.Timeline.OrderBy(e => e.Sequence))
            .SingleOrDefaultAsync(j => j.Number == number, cancel);
        if (job is null)
        {
            return new(null, [new(Severity.Error, Place.None, $"There is no job {number}.", "Look in the job book.")]);
        }

        var opened = Rebuild(job);
        if (opened.Unit is { } unit)
        {
            var settings = await database.Settings.AsNoTracking().SingleOrDefaultAsync(cancel) ?? new();
            opened = opened with
            {
                Past = await JobHistory.OfAsync(database, job, unit.Circuit, cancel),
                Style = settings.DrawingStyle(),
            };
        }

        return new(opened, opened.Findings);
    }

    private OpenedJob Rebuild(Job job)
    {
        var standing = job.Standing();
        if (job.Sheet is not { } sheet)
        {
            return new(job, standing, null, [Setup.Default], Setup.Default, [], []);
        }

        var unit = units.Of(sheet.Text);
        if (unit.Value is null)
        {
            return new(job, standing, null, [Setup.Default], Setup.Default, [], unit.Findings);
        }

        var setups = SetupsReader.Read(standing.Setups, unit.Value.Sheet);
        var chosen = setups.Value!.FirstOrDefault(s => s.Name == standing.ChosenSetup) ?? setups.Value![0];
        List<Finding> findings = [.. unit.Findings, .. setups.Findings];
        var readings = ReadAgain(standing.Readings, unit.Value, setups.Value!, findings);
        return new(job, standing, unit.Value, setups.Value!, chosen, readings, findings);
    }

    private static List<StandingReading> ReadAgain(
        IReadOnlyList<ReadingTaken> taken,
        BenchUnit unit,
        IReadOnlyList<Setup> setups,
        List<Finding> findings
    )
    {
        List<StandingReading> readings = [];
        foreach (var entry in taken)
        {
            var ordered = setups.OrderBy(s => s.Name == entry.Setup ? 0 : 1).ToList();
            var read = ReadingsReader.ReadLine(entry.Line, unit.Sheet, ordered);
            if (read.Value is { } reading)
            {
                readings.Add(new(entry.Sequence, entry.At, reading));
                continue;
            }

            findings.Add(
                new(
                    Severity.Warning,
                    Place.None,
                    $"The stored reading \"{entry.Line}\" cannot be read against this sheet.",
                    "Withdraw it and type it anew."
                )
            );
        }

        return readings;
    }
}
