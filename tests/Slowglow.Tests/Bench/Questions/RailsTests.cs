using Slowglow.Bench.Questions;
using Slowglow.Sheets.Setups;
using Xunit;

namespace Slowglow.Tests.Bench.Questions;

public class RailsTests
{
    [Fact]
    public void The_rails_of_a_valve_combo_follow_the_smoothing_chain() =>
        Assert.Equal(["HT1", "HT2", "HT3", "HT4"], Rails.Of(Demo.Combo.Sheet, Setup.Default));

    [Fact]
    public void A_cathode_bypass_is_no_rail() => Assert.DoesNotContain("V1.8", Rails.Of(Demo.Combo.Sheet, Setup.Default));
}
