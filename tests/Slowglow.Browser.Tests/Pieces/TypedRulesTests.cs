using Slowglow.Storage.Mappings;
using Slowglow.Web.Pages.Settings;
using Slowglow.Workshop.Shop;

namespace Slowglow.Browser.Tests.Pieces;

/// <summary>The shop's rules as they are typed in the settings.</summary>
public sealed class TypedRulesTests
{
    private static readonly ShopRules Rules = ExampleRules.Rules with { Format = ExampleRules.Rules.Papers };

    [Fact]
    public void What_is_not_touched_stays_as_it_was() =>
        Assert.Equal(JsonText.Write(Rules), JsonText.Write(TypedRules.Of(Rules).Read(Rules).Value));

    [Fact]
    public void Days_of_reminding_and_chasing_are_the_shops_own()
    {
        var typed = TypedRules.Of(Rules);
        (typed.Waiting.RemindAfter, typed.Waiting.ChaseDays, typed.Waiting.Most) = ("7, 21 45", "10", "");

        var rules = typed.Read(Rules).Value!;

        Assert.Equal([7, 21, 45], rules.Storage.RemindAfter);
        Assert.Equal((10, null), (rules.ChaseDays, rules.Storage.Most));
    }

    [Fact]
    public void A_rate_of_tax_holds_from_its_day_on()
    {
        var typed = TypedRules.Of(Rules);
        typed.Taxes = "standard 20 2020-01-01\nstandard 22,5 2026-12-01";

        var taxes = typed.Read(Rules).Value!.Taxes;

        Assert.Equal(20, taxes.On("standard", new(2026, 11, 30))!.Percent);
        Assert.Equal(22.5m, taxes.On("standard", new(2026, 12, 1))!.Percent);
    }

    [Fact]
    public void Whatever_is_no_figure_is_named()
    {
        var typed = TypedRules.Of(Rules);
        (typed.Waiting.RemindAfter, typed.Waiting.PayDays, typed.Labour) = ("14 soon", "a fortnight", "bench");

        var read = typed.Read(Rules);

        Assert.Null(read.Value);
        Assert.Equal(
            [
                "\"a fortnight\" is no figure for the days to pay in.",
                "\"soon\" is no figure for a day of reminding.",
                "The line \"bench\" cannot be read.",
            ],
            read.Findings.Select(f => f.Text)
        );
    }
}
