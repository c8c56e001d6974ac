using Slowglow.Bench.Questions;
using Slowglow.Power.Offers;
using Slowglow.Tests.Circuits;

namespace Slowglow.Tests.Power;

/// <summary>Offers compared by the rails they would give.</summary>
public sealed class OfferTests
{
    private static readonly Lazy<BenchUnit> Combo = new(() => BenchUnit.From(DemoText.Of("kittiwake-15")).Value!);

    private static IReadOnlyList<OfferAnswer> Compare(params string[] lines)
    {
        var answer = new CompareOffers(Combo.Value).Run("T1", lines, TestContext.Current.CancellationToken);
        Assert.True(answer.Value is not null, string.Join('\n', answer.Findings));
        return answer.Value;
    }

    [Fact]
    public void The_same_transformer_gives_the_same_rails_and_suits()
    {
        var same = Compare("as drawn: 230V; 230V 220mA; 6.3V 3A; 85VA; price 60; freight 10; tax 20%").Single();
        Assert.True(same.Suits);
        Assert.All(same.Rails, r => Assert.InRange(r.Error, 0, 0.05));
        Assert.Equal(84m, same.Offer.Total);
    }

    [Fact]
    public void Two_windings_in_series_make_one()
    {
        var pair = Compare("pair: 230V; 2x115V 220mA; 6.3V 3A; 85VA").Single();
        Assert.Null(pair.Lacks);
        Assert.Equal(311, pair.Rails.Single(r => r.Winding == "HT").Given, 15.0);
    }

    [Fact]
    public void What_suits_comes_first_and_the_rest_says_why_it_does_not()
    {
        var offers = Compare(
            "too high: 230V; 300V 220mA; 6.3V 3A",
            "no heater: 230V; 230V 220mA",
            "weak: 230V; 230V 100mA; 6.3V 1A",
            "fits: 230V; 230V 220mA; 6.3V 3A",
            "110 V: 110V; 230V 220mA; 6.3V 3A"
        );
        Assert.Equal("fits", offers[0].Offer.Name);
        Assert.Contains("no winding for", offers.Single(o => o.Offer.Name == "no heater").Lacks, StringComparison.Ordinal);
        Assert.Contains("its primary takes 110 V", offers.Single(o => o.Offer.Name == "110 V").Lacks, StringComparison.Ordinal);
        Assert.True(offers.Single(o => o.Offer.Name == "weak").Load > 1);
        Assert.True(offers.Single(o => o.Offer.Name == "too high").WorstRail > 0.1);
    }

    [Theory]
    [InlineData("230V; 250V", "it has no name")]
    [InlineData("x: 230V", "it needs the volts of its primary and of at least one secondary")]
    [InlineData("x: 230V; hot", "its windings cannot be read")]
    [InlineData("x: 230V; 250V 1A; price -5", "none below zero")]
    public void What_cannot_be_is_answered_with_a_sentence(string line, string sentence)
    {
        var answer = new CompareOffers(Combo.Value).Run("T1", [line], TestContext.Current.CancellationToken);
        Assert.Contains(sentence, answer.Findings[0].Text, StringComparison.Ordinal);
    }
}
