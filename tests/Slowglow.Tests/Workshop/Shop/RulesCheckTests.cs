using Slowglow.Workshop.Pricing;
using Slowglow.Workshop.Shop;
using Xunit;

namespace Slowglow.Tests.Workshop.Shop;

public sealed class RulesCheckTests
{
    private static readonly ShopRules Rules = ExampleRules.Rules;

    [Fact]
    public void Examples_pass() => Assert.Empty(RulesCheck.Look(Rules));

    [Theory]
    [InlineData(new[] { 30, 14 }, false)]
    [InlineData(new[] { 14, 14 }, false)]
    [InlineData(new[] { 0 }, false)]
    [InlineData(new[] { 4000 }, false)]
    [InlineData(new[] { 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13 }, false)]
    [InlineData(new int[0], true)]
    [InlineData(new[] { 10, 20, 40 }, true)]
    public void Reminders_rise_from_day_to_day(int[] days, bool passes) =>
        Assert.Equal(passes, RulesCheck.Look(Rules with { Storage = Rules.Storage with { RemindAfter = days } }).Count == 0);

    [Fact]
    public void Nothing_that_is_waited_or_paid_for_is_below_0()
    {
        ShopRules[] wrong =
        [
            Rules with
            {
                ChaseDays = -1,
            },
            Rules with
            {
                Storage = Rules.Storage with { FreeDays = -1 },
            },
            Rules with
            {
                Storage = Rules.Storage with { Most = -1 },
            },
            Rules with
            {
                Markup = Rules.Markup with { RoundUpTo = -1 },
            },
            Rules with
            {
                Markup = Rules.Markup with { Steps = [new MarkupStep(50, 50), new MarkupStep(10, 100)] },
            },
        ];

        Assert.All(wrong, rules => Assert.Single(RulesCheck.Look(rules)));
    }
}
