using System.Globalization;
using Slowglow.Bench.Papers;
using Slowglow.Storage.Sqlite;
using Slowglow.Storage.Tests.Counter;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Tests.Killed;

/// <summary>What runs in the process that is killed. Started by <see cref="KilledProcessTests"/> alone.</summary>
public sealed class BurstWriter
{
    public const string ShopVariable = "SLOWGLOW_BURST_SHOP";
    public const string JobVariable = "SLOWGLOW_BURST_JOB";
    private const int Entries = 1000;

    /// <summary>Every acknowledged entry leaves a line in the file of acknowledgements, after it was stored and never before.</summary>
    [Fact(Explicit = true)]
    public async Task Writes_entries_until_it_is_killed()
    {
        var path =
            Environment.GetEnvironmentVariable(ShopVariable)
            ?? throw new InvalidOperationException("Started by another test only.");
        var job = int.Parse(Environment.GetEnvironmentVariable(JobVariable)!, CultureInfo.InvariantCulture);
        var cancel = TestContext.Current.CancellationToken;
        var floor = new ShopFloor(new SqliteShop(path));
        await using var said = new StreamWriter(path + ".said", append: true) { AutoFlush = true };
        for (var n = 1; n <= Entries; n++)
        {
            if (n % 5 == 0)
            {
                var issued = await new IssueInvoice(floor.Ledger).RunAsync(job, [ShopFloor.Line(n)], cancel: cancel);
                await said.WriteLineAsync($"invoice {((PaperIssued)issued.Value!).What.Number}");
            }
            else
            {
                var text = Guid.NewGuid().ToString("N");
                Assert.Empty((await floor.EnterAsync(job, new NoteWritten { Text = text })).Findings);
                await said.WriteLineAsync($"note {text}");
            }
        }
    }
}
