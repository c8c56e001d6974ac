using Slowglow.Bench.Jobs;
using Slowglow.Storage.Sqlite;
using Slowglow.Workshop.People;
using Slowglow.Workshop.Shop;
using Xunit;

namespace Slowglow.Tests.Cli;

public sealed class ForgetPinsCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("slowglow-pins-").FullName;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task Every_pin_is_gone_and_the_people_stay()
    {
        var data = Path.Combine(folder, "shop.db");
        var shop = new SqliteShop(data);
        await shop.PrepareAsync(Cancel);
        await using (var database = shop.CreateDbContext())
        {
            Person[] people = [new("Ada", Role.Owner, PinHash.Of("4711")), new("Bea", Role.Bench)];
            database.Settings.Add(new() { Rules = ExampleRules.Rules with { People = people } });
            await database.SaveChangesAsync(Cancel);
        }

        var run = await RunCommand.With("forget-pins", "--data", data);

        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.Contains("No PIN is asked for any more.", run.Out, StringComparison.Ordinal);
        var rules = (await new ReadSettings(shop).RunAsync(Cancel)).Rules!;
        Assert.False(rules.AsksForPin);
        Assert.Equal([new Person("Ada", Role.Owner), new Person("Bea", Role.Bench)], rules.People);
    }

    [Theory]
    [InlineData("--data", "nowhere.db", "There is no shop at ")]
    [InlineData("--postgres", "nonsense", "The connection cannot be read")]
    public async Task Shop_that_is_not_there_gets_a_sentence(string option, string value, string sentence)
    {
        var run = await RunCommand.With("forget-pins", option, value);
        Assert.Equal(1, run.Code);
        Assert.Contains(sentence, run.Error, StringComparison.Ordinal);
    }
}
