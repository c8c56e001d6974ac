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
        var answer = new CompareOffers(Combo.Value).Run("T1", lines, cancel: TestContext.Current.CancellationToken);
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
    [InlineData("size 96x80x75mm; holes 80x64mm", true, "fits, bolts to the old holes")]
    [InlineData("size 85x100x75mm; holes 64x81mm", true, "fits, bolts to the old holes")]
    [InlineData("size 96x80x75mm; holes 70x50mm", true, "fits, new holes to drill, 70 by 50 mm")]
    [InlineData("size 96x80x102mm", false, "12 mm too high")]
    [InlineData("size 120x80x75mm", false, "20 mm too wide")]
    [InlineData("price 5", null, "size not known")]
    public void A_transformer_fits_the_room_or_it_is_said_by_how_much_not(string body, bool? fits, string words)
    {
        var offer = OfferReader.Read($"x: 230V; 230V 220mA; 6.3V 3A; {body}", 50).Value!;
        var room = BodyReader.Place("size 100x85x90mm; holes 80x64mm").Value!;
        Assert.Equal(new MountingFit(fits, words), MountingFit.Of(room, offer.Body));
    }

    [Theory]
    [InlineData("100 by 85")]
    [InlineData("size 100x85")]
    [InlineData("size 0x85x90")]
    [InlineData("holes -3x4")]
    public void Room_that_cannot_be_is_answered_with_a_sentence(string place)
    {
        var answer = new CompareOffers(Combo.Value).Run(
            "T1",
            ["x: 230V; 230V 220mA; 6.3V 3A"],
            place,
            TestContext.Current.CancellationToken
        );
        Assert.Contains("is no room for a transformer", answer.Findings[0].Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("x: 230V; 250V 1A; size 3x4", "its size or holes cannot be read")]
    [InlineData("230V; 250V", "it has no name")]
    [InlineData("x: 230V", "it needs the volts of its primary and of at least one secondary")]
    [InlineData("x: 230V; hot", "its winding \"hot\" cannot be read")]
    [InlineData("x: mains; 6.3V", "its winding \"mains\" cannot be read")]
    [InlineData("x: 230V; 250V 1A; price -5", "its price \"-5\" is no figure that can be")]
    [InlineData("x: 230V; 250V 1A; tax 120%", "its tax \"120%\" is no figure that can be")]
    public void What_cannot_be_is_answered_with_a_sentence(string line, string sentence)
    {
        var answer = new CompareOffers(Combo.Value).Run("T1", [line], cancel: TestContext.Current.CancellationToken);
        Assert.Contains(sentence, answer.Findings[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void All_that_is_wrong_is_said_at_once()
    {
        var findings = OfferReader.Read("x: 230V; hot; price much; weeks soon", 50).Findings;

        Assert.Equal(3, findings.Count);
        Assert.All(findings, f => Assert.StartsWith("offer \"x\": its ", f.Text, StringComparison.Ordinal));
    }
}
