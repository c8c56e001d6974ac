using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

public sealed class BenchSettingsTests(Chromium chromium)
{
    [Fact]
    public async Task Complaint_can_be_put_differently()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);

        await person.Page.GetByRole(AriaRole.Button, new() { Name = "Change the complaint" }).ClickAsync();
        await person.Page.Locator("#complaint").FillAsync("first channel silent");
        await person.Page.GetByRole(AriaRole.Button, new() { Name = "Store", Exact = true }).First.ClickAsync();

        await Expect(person.Page.Locator(".complaint blockquote")).ToHaveTextAsync("first channel silent");
        await Expect(person.Page.Locator(".timeline")).ToContainTextAsync("Complaint changed");
    }

    [Fact]
    public async Task New_setup_changes_what_points_should_read()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);
        await person.SettledAsync();

        await DescribeAsync(person, "gentle", "mains: 90 V, limiter: 60 W, tubes: out");

        await Expect(person.Page.Locator("#setup")).ToHaveValueAsync("gentle");
        await Expect(person.Page.Locator(".setup .keys")).ToContainTextAsync("valves out");
        await Expect(person.Page.Locator(".points-card .hint")).ToContainTextAsync("gentle");
        await person.SettledAsync();
        await Expect(person.Page.Locator(".stale")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Setup_that_makes_no_sense_says_so_and_keeps_the_text()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);

        await DescribeAsync(person, "odd", "mains: lots");

        await Expect(person.Page.Locator("#setup-wrong")).ToContainTextAsync("Wrong");
        await Expect(person.Page.Locator("#setup-keys")).ToHaveValueAsync("mains: lots");
    }

    [Fact]
    public async Task Words_of_the_shop_change_every_open_page()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);
        var other = await BenchPerson.AtAsync(someone, bench.Url + "/settings");

        await other.Page.GetByLabel("tube, plate, ground, B+").CheckAsync();

        await Expect(person.Page.Locator(".cautions")).ToContainTextAsync("Mains and B+ can kill");
    }

    [Fact]
    public async Task Resistors_turn_into_zigzags_on_every_open_page()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);
        await person.SettledAsync();
        var resistor = person.Page.Locator(".drawing-card .drawn [data-part='R10']");
        var box = await resistor.InnerHTMLAsync();
        var other = await BenchPerson.AtAsync(someone, bench.Url + "/settings");

        await other.Page.GetByLabel("Resistors drawn as a zigzag").CheckAsync();
        await other.Page.GetByRole(AriaRole.Button, new() { Name = "Settle it" }).ClickAsync();

        await Expect(other.Page.GetByText("Papers issued before keep what they say.")).ToBeVisibleAsync();
        await person.Page.WaitForFunctionAsync(
            "box => { const r = document.querySelector(\".drawing-card .drawn [data-part='R10']\"); return r && r.innerHTML !== box; }",
            box
        );
    }

    private static async Task DescribeAsync(BenchPerson person, string name, string keys)
    {
        await person.Page.GetByText("Describe another setup").ClickAsync();
        await person.Page.Locator("#setup-name").FillAsync(name);
        await person.Page.Locator("#setup-keys").FillAsync(keys);
        await person.Page.GetByRole(AriaRole.Button, new() { Name = "Add it and change to it" }).ClickAsync();
    }
}
