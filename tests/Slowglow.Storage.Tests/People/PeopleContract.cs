using Slowglow.Bench.Jobs;
using Slowglow.Bench.Papers;
using Slowglow.Bench.People;
using Slowglow.Storage.Tests.Counter;
using Slowglow.Workshop.People;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Tests.People;

/// <summary>Who may write what into a shop that asks for PINs, on every kind of database.</summary>
public abstract class PeopleContract
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    protected abstract Task<IShopUnderTest> StartAsync();

    [Fact]
    public async Task Roles_hold_once_there_is_a_pin_and_the_timeline_says_who()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync();
        var settings = new ReadSettings(under.Shop);
        var change = new ChangePeople(settings, new ChangeRules(new SettingsWriter(under.Shop, floor.News)));
        Assert.Empty(
            await change.RunAsync(
                [("Ada", Role.Owner, "4711"), ("Bea", Role.Bench, "0815"), ("Cy", Role.Counter, "9999")],
                Cancel
            )
        );
        var signIn = new SignIn(settings, TimeProvider.System);
        Assert.NotEmpty((await signIn.RunAsync("Ada", "0000", Cancel)).Findings);
        var token = (await signIn.RunAsync("Ada", "4711", Cancel)).Value;
        Assert.Equal("Ada", signIn.Who(token, (await settings.RunAsync(Cancel)).Rules!));

        Someone.Name = null;
        Assert.Contains("Nobody is signed in", (await NoteAsync(floor, job)).Findings[0].Text, StringComparison.Ordinal);
        Someone.Name = "Bea";
        Assert.Equal("Bea", (await NoteAsync(floor, job)).Value!.By);
        var invoice = new IssueInvoice(floor.Ledger);
        var refused = await invoice.RunAsync(job, [ShopFloor.Line(10)], "Ada", Cancel);
        Assert.Equal("Bea (bench) may not issue invoices.", Assert.Single(refused.Findings).Text);
        Assert.Equal(
            "Bea (bench) may not change the shop's settings.",
            Assert.Single(await change.RunAsync([("Bea", Role.Owner, "1111")], Cancel)).Text
        );
        Someone.Name = "Cy";
        var issued = await invoice.RunAsync(job, [ShopFloor.Line(10)], null, Cancel);
        Assert.Equal(("Cy", 1), (issued.Value!.By, ((PaperIssued)issued.Value).What.Number));
        Assert.NotEmpty((await new CreditInvoice(floor.Ledger).RunAsync(job, 1, null, "too much", null, Cancel)).Findings);
        Someone.Name = "Ada";
        Assert.Empty((await new CreditInvoice(floor.Ledger).RunAsync(job, 1, null, "too much", null, Cancel)).Findings);

        // Taken out of the list, she is nobody, whatever her browser still holds.
        Assert.Empty(await change.RunAsync([("Dot", Role.Owner, "2222")], Cancel));
        Assert.Null(signIn.Who(token, (await settings.RunAsync(Cancel)).Rules!));
        await new ForgetPins(under.Shop).RunAsync(Cancel);
        Someone.Name = null;
        Assert.NotNull((await NoteAsync(floor, job)).Value);
    }

    [Fact]
    public async Task Five_wrong_pins_make_it_wait()
    {
        await using var under = await StartAsync();
        var settings = new ReadSettings(under.Shop);
        await new ChangePeople(settings, new ChangeRules(new SettingsWriter(under.Shop, new JobNews()))).RunAsync(
            [("Ada", Role.Owner, "4711")],
            Cancel
        );
        var signIn = new SignIn(settings, TimeProvider.System);
        for (var i = 0; i < 5; i++)
        {
            Assert.Contains(
                "not the PIN",
                (await signIn.RunAsync("Ada", "1234", Cancel)).Findings[0].Text,
                StringComparison.Ordinal
            );
        }

        Assert.Contains("Too many", (await signIn.RunAsync("Ada", "4711", Cancel)).Findings[0].Text, StringComparison.Ordinal);
    }

    private static Task<Sheets.Parsed<TimelineEntry>> NoteAsync(ShopFloor floor, int job) =>
        floor.EnterAsync(job, new NoteWritten { Text = "hums" });
}
