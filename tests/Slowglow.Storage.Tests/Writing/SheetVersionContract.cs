using Slowglow.Bench.Writing;
using Slowglow.Storage.Tests.Counter;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Tests.Writing;

/// <summary>A job's sheet is never written over, on every kind of database.</summary>
public abstract class SheetVersionContract
{
    private const string First = "sheet: 1\nunit: Tern 2\nparts:\n  R1: 10k IN -> GND\n";
    private const string Second = "sheet: 1\nunit: Tern 2\nparts:\n  R1: 12k IN -> GND\n";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    protected abstract Task<IShopUnderTest> StartAsync();

    [Fact]
    public async Task Saving_makes_a_new_version_and_keeps_the_older_ones()
    {
        await using var under = await StartAsync();
        var (floor, save) = Shop(under);
        var job = await floor.BookAsync();
        var one = await save.RunAsync(job, First, null, cancel: Cancel);
        var two = await save.RunAsync(job, Second, one.Value!.Sheet, cancel: Cancel);

        var versions = (await new ReadVersions(under.Reopened()).RunAsync(job, Cancel)).Value!;

        Assert.Equal([First, Second], versions.Versions.Select(v => v.Text));
        Assert.Equal([1, 2], versions.Versions.Select(v => v.Ordinal));
        Assert.Equal(two.Value!.Sheet, versions.Newest!.Id);
        var laid = (await floor.FileAsync(job)).Job.Timeline.OfType<SheetAttached>().OrderBy(e => e.Sequence).ToList();
        Assert.Equal([null, one.Value.Sheet], laid.Select(e => e.What.Follows));
    }

    [Fact]
    public async Task Text_typed_over_an_older_version_is_refused_until_the_person_says_so()
    {
        await using var under = await StartAsync();
        var (floor, save) = Shop(under);
        var job = await floor.BookAsync();
        var one = (await save.RunAsync(job, First, null, cancel: Cancel)).Value!.Sheet;
        await save.RunAsync(job, Second, one, cancel: Cancel);

        var late = await save.RunAsync(job, First + "# late\n", one, cancel: Cancel);

        Assert.Contains("newer version", Assert.Single(late.Findings).Text, StringComparison.Ordinal);
        Assert.Equal(Second, (await new ReadVersions(under.Shop).RunAsync(job, Cancel)).Value!.Newest!.Text);
        Assert.NotNull((await save.RunAsync(job, First + "# late\n", one, overNewer: true, Cancel)).Value);
        Assert.Equal(3, (await new ReadVersions(under.Shop).RunAsync(job, Cancel)).Value!.Versions.Count);
    }

    [Fact]
    public async Task Same_text_again_is_no_new_version()
    {
        await using var under = await StartAsync();
        var (floor, save) = Shop(under);
        var job = await floor.BookAsync();
        var one = (await save.RunAsync(job, First, null, cancel: Cancel)).Value!.Sheet;

        var again = (await save.RunAsync(job, First, null, cancel: Cancel)).Value!;

        Assert.Equal((one, false), (again.Sheet, again.IsNew));
        Assert.Single((await new ReadVersions(under.Shop).RunAsync(job, Cancel)).Value!.Versions);
    }

    [Fact]
    public async Task Next_job_on_the_model_is_given_the_newest_version_as_its_first()
    {
        await using var under = await StartAsync();
        var (floor, save) = Shop(under);
        var job = await floor.BookAsync();
        var one = (await save.RunAsync(job, First, null, cancel: Cancel)).Value!.Sheet;
        await save.RunAsync(job, Second, one, cancel: Cancel);

        var next = (await new ReadVersions(under.Shop).RunAsync(await floor.BookAsync(), Cancel)).Value!;

        Assert.Equal(Second, Assert.Single(next.Versions).Text);
    }

    private static (ShopFloor Floor, SaveSheet Save) Shop(IShopUnderTest under)
    {
        var floor = new ShopFloor(under.Shop);
        return (floor, new SaveSheet(under.Shop, floor.Ledger, TimeProvider.System));
    }
}
