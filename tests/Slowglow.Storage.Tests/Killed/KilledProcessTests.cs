using System.Diagnostics;
using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Slowglow.Storage.Tests.Counter;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Tests.Killed;

/// <summary>A power cut in the middle of work.</summary>
public sealed class KilledProcessTests
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(90);

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>How often a writer is killed: SLOWGLOW_KILLS, else 6.</summary>
    private static int Kills =>
        int.TryParse(Environment.GetEnvironmentVariable("SLOWGLOW_KILLS"), CultureInfo.InvariantCulture, out var kills)
            ? kills
            : 6;

    [Fact]
    public async Task Every_acknowledged_entry_is_there_and_numbers_have_no_gap()
    {
        await using var under = await SqliteUnderTest.StartAsync();
        for (var kill = 0; kill < Kills; kill++)
        {
            var job = await new ShopFloor(under.Shop).BookAsync();
            await KillOneAsync(under.FilePath, job, TimeSpan.FromMilliseconds(50 + kill * 97 % 700));
            await LookAsync(under, await File.ReadAllLinesAsync(under.FilePath + ".said", Cancel));
        }
    }

    private static async Task KillOneAsync(string path, int job, TimeSpan after)
    {
        var before = Said(path);
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        string[] words =
        [
            "exec",
            typeof(BurstWriter).Assembly.Location,
            "-explicit",
            "only",
            "-class",
            typeof(BurstWriter).FullName!,
        ];
        foreach (var word in words)
        {
            start.ArgumentList.Add(word);
        }

        start.Environment[BurstWriter.ShopVariable] = path;
        start.Environment[BurstWriter.JobVariable] = job.ToString(CultureInfo.InvariantCulture);
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync(Cancel);
        _ = process.StandardError.ReadToEndAsync(Cancel);
        var clock = Stopwatch.StartNew();
        while (Said(path) == before && clock.Elapsed < Longest && !process.HasExited)
        {
            await Task.Delay(5, Cancel);
        }

        await Task.Delay(after, Cancel);
        Assert.False(process.HasExited, process.HasExited ? await output : "");
        process.Kill();
        await process.WaitForExitAsync(Cancel);
    }

    private static long Said(string path) => File.Exists(path + ".said") ? new FileInfo(path + ".said").Length : 0;

    /// <summary>A line cut short by the kill was not acknowledged whole; what it speaks of may be there or not.</summary>
    private static async Task LookAsync(SqliteUnderTest under, string[] said)
    {
        await using var database = under.Reopened().CreateDbContext();
        var notes = (await database.Timeline.OfType<NoteWritten>().Select(n => n.Text).ToListAsync(Cancel)).ToHashSet();
        var numbers = await database.Papers.Select(p => p.Number).OrderBy(n => n).ToListAsync(Cancel);
        foreach (var line in said.Where(l => l.StartsWith("note ", StringComparison.Ordinal) && l.Length == 37))
        {
            Assert.Contains(line[5..], notes);
        }

        Assert.Equal(Enumerable.Range(1, numbers.Count), numbers);
        foreach (var line in said.Where(l => l.StartsWith("invoice ", StringComparison.Ordinal) && l.Length > 8))
        {
            Assert.Contains(int.Parse(line[8..], CultureInfo.InvariantCulture), numbers);
        }

        Assert.Equal(numbers.Count, await database.Timeline.OfType<PaperIssued>().CountAsync(Cancel));
        foreach (
            var job in await database
                .Timeline.GroupBy(e => e.JobNumber)
                .Select(g => new { Count = g.Count(), Last = g.Max(e => e.Sequence) })
                .ToListAsync(Cancel)
        )
        {
            Assert.Equal(job.Last, job.Count);
        }

        Assert.False(
            await database.Board.AnyAsync(
                c => c.LastSequence != database.Timeline.Where(e => e.JobNumber == c.JobNumber).Max(e => e.Sequence),
                Cancel
            )
        );
    }
}
