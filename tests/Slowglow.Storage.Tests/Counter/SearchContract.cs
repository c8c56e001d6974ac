using Slowglow.Bench.Counter;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Tests.Counter;

/// <summary>The search box over a shop, on every kind of database.</summary>
public abstract class SearchContract
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    protected abstract Task<IShopUnderTest> StartAsync();

    [Fact]
    public async Task Every_part_of_a_word_is_found_and_signs_of_the_search_language_are_plain_letters()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var open = await floor.BookAsync(
            ShopFloor.Booking with
            {
                Name = "O'Neil \"Red\" 100%_\\",
                Complaint = "hums AND buzzes",
            }
        );
        var gone = await floor.BookAsync(ShopFloor.Booking with { Name = "李 Ζωή", Serial = "X-99", Complaint = "hums OR not" });
        await floor.DoAsync(gone, new StateChanged { State = JobState.HandedOver });
        var search = new SearchBook(under.Shop);
        foreach (var typed in new[] { "neil", "\"red\"", "100%_\\", "o'n", "AND buzz", "hums AND", "um" })
        {
            Assert.Contains(open, (await search.RunAsync(typed, Cancel)).Jobs.Select(j => j.JobNumber));
        }

        foreach (var typed in new[] { "李", "ζωή", "99", "x-99", "hums OR", "h o r" })
        {
            Assert.Contains(gone, (await search.RunAsync(typed, Cancel)).Jobs.Select(j => j.JobNumber));
        }

        foreach (var typed in new[] { "humsxbuzzes", "%%%", "___", "neil NEAR red", "hum*", "words: hums", "(((", "\0" })
        {
            Assert.Empty((await search.RunAsync(typed, Cancel)).Jobs);
        }

        Assert.Equal([open, gone], (await search.RunAsync("hums", Cancel)).Jobs.Select(j => j.JobNumber));
        await floor.DoAsync(gone, new ComplaintChanged { Complaint = "whistles" });
        Assert.Equal(gone, Assert.Single((await search.RunAsync("whistles", Cancel)).Jobs).JobNumber);
        Assert.Equal(open, Assert.Single((await search.RunAsync("hums", Cancel)).Jobs).JobNumber);
    }
}
