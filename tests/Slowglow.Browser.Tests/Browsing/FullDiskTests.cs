using Microsoft.Playwright;
using Slowglow.Storage.Sqlite;
using Slowglow.Workshop.Customers;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Timeline;
using Slowglow.Workshop.Units;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>The program runs in a process of its own from which the system takes all room for files.</summary>
public sealed class FullDiskTests(Chromium chromium)
{
    private const int StartingMilliseconds = 60_000;
    private const string Sentence = "This could not be stored.";
    private static readonly string Pictures = Path.Combine(AppContext.BaseDirectory, "pictures");

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_was_typed_or_chosen_is_still_there_and_goes_in_once_there_is_room()
    {
        var folder = Directory.CreateTempSubdirectory("slowglow-full-").FullName;
        var data = Path.Combine(folder, "shop.db");
        await BookedAsync(data);
        await using var bench = await BenchProcess.StartAsync(data, 0);
        await using var someone = await chromium.SomeoneAsync();
        var counter = await CounterPerson.AtAsync(someone, bench.Url + "/job/1001/papers");
        var page = counter.Page;
        var photo = Path.Combine(folder, "burnt.jpg");
        await File.WriteAllBytesAsync(photo, await page.ScreenshotAsync(new() { Type = ScreenshotType.Jpeg }), Cancel);
        await page.Locator("#photos").SetInputFilesAsync(photo);
        await page.GetByLabel("What burnt.jpg shows").FillAsync("burnt resistor");
        await counter.FillAsync(("hours-what", "looked for the smell"), ("hours-minutes", "30"));

        await bench.LimitAsync(full: true);
        await counter.PressAsync("hours", "Enter the minutes");
        await counter.PressAsync("photos", "Store the photograph");

        await Expect(counter.Card("hours")).ToContainTextAsync(Sentence);
        await Expect(counter.Card("photos")).ToContainTextAsync(Sentence);
        await Expect(page.Locator("#hours-what")).ToHaveValueAsync("looked for the smell");
        await Expect(page.Locator("#hours-minutes")).ToHaveValueAsync("30");
        await Expect(page.GetByLabel("What burnt.jpg shows")).ToHaveValueAsync("burnt resistor");
        await Expect(counter.Card("photos").Locator("img")).ToHaveCountAsync(0);
        await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, "full-disk-1440.png"), FullPage = true });

        await bench.LimitAsync(full: false);
        await counter.PressAsync("hours", "Enter the minutes");
        await counter.PressAsync("photos", "Store the photograph");
        await counter.SaysAsync("looked for the smell");
        await Expect(counter.Card("photos").Locator("img")).ToHaveCountAsync(1);
        await Expect(counter.Card("hours")).Not.ToContainTextAsync(Sentence);
        await bench.KillAsync();
        await StoredAsync(data, 3);
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task Booking_in_and_the_reading_line_say_it_too()
    {
        var folder = Directory.CreateTempSubdirectory("slowglow-full-").FullName;
        var data = Path.Combine(folder, "shop.db");
        await BookedAsync(data);
        await using var bench = await BenchProcess.StartAsync(data, 0);
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url + "/job/1001");
        await Expect(person.Line).ToBeEnabledAsync(new() { Timeout = StartingMilliseconds });
        await bench.LimitAsync(full: true);

        await person.TypeAsync("P18 = 17.9 V");
        await Expect(person.Said).ToContainTextAsync(Sentence);
        await Expect(person.Line).ToHaveValueAsync("P18 = 17.9 V");

        var counter = new CounterPerson(person);
        await counter.GoAsync(bench.Url + "/book-in");
        await counter.FillAsync(("in-name", "Ottoline"), ("in-model", "Tern 2"), ("in-complaint", "hums"));
        await person.Page.GetByRole(AriaRole.Button, new() { Name = "Book it in" }).ClickAsync();
        await Expect(person.Page.Locator(".findings").First).ToContainTextAsync("could not be stored");
        await Expect(person.Page.Locator("#in-complaint")).ToHaveValueAsync("hums");
        await bench.LimitAsync(full: false);
        await person.Page.GetByRole(AriaRole.Button, new() { Name = "Book it in" }).ClickAsync();
        await Expect(counter.State).ToHaveTextAsync("booked in");
        await bench.KillAsync();
        await StoredAsync(data, 1);
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>A shop with one job, so that the demo does not take its minute.</summary>
    private static async Task BookedAsync(string data)
    {
        var shop = new SqliteShop(data);
        await shop.PrepareAsync(Cancel);
        await using var database = shop.CreateDbContext();
        var root = new DirectoryInfo(AppContext.BaseDirectory).Parent!.Parent!.Parent!.Parent!.Parent!.FullName;
        var now = DateTimeOffset.UtcNow;
        database.Jobs.Add(
            new Job
            {
                Number = 1001,
                Customer = new Customer { Name = "Ada Fenwick", Contact = "" },
                Unit = new UnitOnBench("Corvane Audio", "Bittern PS2", "7", 230),
                Sheet = new DrawnSheet
                {
                    Title = "Bittern PS2",
                    Text = await File.ReadAllTextAsync(Path.Combine(root, "demo", "sheets", "bittern-ps2.yaml"), Cancel),
                    AddedAt = now,
                },
                BookedIn = now,
                Timeline =
                [
                    new BookedIn
                    {
                        JobNumber = 1001,
                        Sequence = 1,
                        At = now,
                        Complaint = "smells burnt",
                    },
                ],
            }
        );
        await database.SaveChangesAsync(Cancel);
        await Storage.BoardUpkeep.RunAsync(database, Cancel);
    }

    /// <summary>Everything went in once, and nothing half.</summary>
    private static async Task StoredAsync(string data, int entries)
    {
        await using var database = new SqliteShop(data).CreateDbContext();
        var sequences = database.Timeline.Where(e => e.JobNumber == 1001).Select(e => e.Sequence).ToList();
        Assert.Equal(Enumerable.Range(1, entries), sequences.Order());
        Assert.Equal(entries > 1 ? 1 : 0, database.Photos.Count());
        Assert.Equal(database.Jobs.Count(), database.Board.Count());
        await database.DisposeAsync();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
    }
}
