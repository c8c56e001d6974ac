using Microsoft.Extensions.DependencyInjection;
using Slowglow.Bench.Counter;
using Slowglow.Bench.Writing;
using Slowglow.Browser.Tests.Browsing;
using Slowglow.Sheets;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Typing;

/// <summary>
/// A preamplifier of some sixty parts is typed from nothing, key by key, as somebody would who knows the page; docs/typing-effort.md works out
/// how long that takes. Once with the second channel copied from the first, once with both typed.
/// </summary>
public sealed class TypingEffortTests(Chromium chromium)
{
    private const int MostStrokes = 1500;
    private const int FewestParts = 60;

    [Theory]
    [InlineData("second-copied.keys")]
    [InlineData("second.keys")]
    public async Task Sheet_of_sixty_parts_takes_no_more_than_1500_keystrokes(string second)
    {
        await using var bench = await BenchUnderTest.StartAsync([]);
        var job = await BookAsync(bench);
        await using var someone = await chromium.SomeoneAsync();
        var person = await SheetPerson.AtAsync(someone, bench.Url, job);
        await person.Text.ClickAsync();
        var typist = new Typist(person.Page);

        foreach (var part in new[] { "head.keys", "first.keys", second, "foot.keys" })
        {
            await typist.TypeAsync(KeyScript.Read(part));
        }

        await Expect(person.Kept).ToContainTextAsync("Saved as version 1");
        var saved = await bench.Services.GetRequiredService<ReadVersions>().RunAsync(job, TestContext.Current.CancellationToken);
        Compare(saved.Value!.Newest!.Text);
        var lines = saved.Value.Newest.Text.Split('\n').Count(l => l.Trim().Length > 0);
        TestContext.Current.TestOutputHelper!.WriteLine(
            $"{second}: {typist.Strokes} keystrokes in {typist.Presses} presses, {typist.Taken} of them words taken from the list; {lines} lines, "
                + $"letter by letter they would be {KeyScript.LetterByLetter(saved.Value.Newest.Text)} keystrokes"
        );
        Assert.InRange(typist.Strokes, 1, MostStrokes);
        await person.Page.ScreenshotAsync(
            new() { Path = Path.Combine(AppContext.BaseDirectory, "pictures", "typed-" + second + ".png"), FullPage = true }
        );
    }

    private static void Compare(string text)
    {
        var drawn = SheetReader.Read(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Typing", "reedling-vp2.yaml")));
        var typed = SheetReader.Read(text);
        Assert.Empty(new ReadTyped().Run(text).Findings.Where(f => f.Severity != "note").Select(f => $"{f.Line}: {f.Text}"));
        Assert.True(typed.Value!.Parts.Count >= FewestParts);
        Assert.Equal(SameCircuit.Parts(drawn.Value!), SameCircuit.Parts(typed.Value));
        Assert.Equal(SameCircuit.Nets(drawn.Value!), SameCircuit.Nets(typed.Value));
        Assert.Equal(drawn.Value!.Signals, typed.Value.Signals);
        Assert.Equal(Knobs(drawn.Value), Knobs(typed.Value));
        Assert.Equal(drawn.Value.Unit, typed.Value.Unit);
    }

    private static IEnumerable<(string Name, double Rotation)> Knobs(Sheet sheet) =>
        sheet.Controls.Select(c => (c.Name, c.Rotation)).Order();

    private static async Task<int> BookAsync(BenchUnderTest bench)
    {
        var booking = new Booking(
            null,
            "Ada Fenwick",
            "+44 (0)20 7946-0123",
            "",
            "",
            "Quillow Amplification",
            "Reedling VP2",
            "QA-0093",
            230,
            "second channel dull",
            "",
            "",
            "",
            "lead",
            null,
            null,
            null,
            null,
            null,
            null
        );
        var booked = await bench
            .Services.GetRequiredService<BookIn>()
            .RunAsync(booking, cancel: TestContext.Current.CancellationToken);
        Assert.Empty(booked.Findings);
        return booked.Value!.Number;
    }
}
