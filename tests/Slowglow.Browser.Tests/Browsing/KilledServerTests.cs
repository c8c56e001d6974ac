using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

public sealed class KilledServerTests(Chromium chromium)
{
    /// <summary>A process that starts while another one is solving on a small machine.</summary>
    private const int StartingMilliseconds = 60_000;

    [Fact]
    public async Task Killed_server_comes_back_to_the_same_state_and_so_does_the_open_page()
    {
        var folder = Directory.CreateTempSubdirectory("slowglow-killed-").FullName;
        var data = Path.Combine(folder, "shop.db");
        await using var someone = await chromium.SomeoneAsync();
        BenchPerson person;
        int port;
        await using (var first = await BenchProcess.StartAsync(data, 0))
        {
            port = first.Port;
            person = await BenchPerson.AtAsync(someone, first.Url);
            await person.TypeAsync($"{Combo.Anode} = 61.7 V");
            await Expect(person.Said).ToContainTextAsync("Stored");
            await person.Line.PressSequentiallyAsync($"{Combo.Cathode} = 0.4");
            await first.KillAsync();
        }

        await Expect(person.Page.Locator("#components-reconnect-modal")).ToBeVisibleAsync();
        await using var second = await BenchProcess.StartAsync(data, port);

        await Expect(person.Point(Combo.Anode).First).ToContainTextAsync("61.7 V", new() { Timeout = StartingMilliseconds });
        await Expect(person.Page.Locator("#components-reconnect-modal"))
            .Not.ToBeVisibleAsync(new() { Timeout = StartingMilliseconds });
        await Expect(person.Line).ToHaveValueAsync($"{Combo.Cathode} = 0.4", new() { Timeout = StartingMilliseconds });
        await second.KillAsync();
        Directory.Delete(folder, recursive: true);
    }
}
