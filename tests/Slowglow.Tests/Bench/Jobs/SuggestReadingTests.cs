using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Bench.Jobs;

public sealed class SuggestReadingTests
{
    private const string Text = """
        sheet: 1
        unit: Wren one
        mains: { volts: 230 V, frequency: 50 Hz }
        parts:
          V1: 12AX7
          R1: 100k HT1 -> V1.6
          R2: 1k5 V1.8 -> GND
          R3: 1M IN -> GND
          R4: 68k IN -> V1.7
        """;

    private static readonly SuggestReading Suggest = new(
        SheetReader.Read(Text).Value!,
        [Setup.Default, new Setup { Name = "slow", MainsVolts = 110 }, Setup.Cold]
    );

    [Theory]
    [InlineData("v1.6", "V1.6 = ")]
    [InlineData("HT", "HT1 = ")]
    [InlineData("MAI", "MAINS = ")]
    [InlineData("HT1 - V1.6", "HT1 - V1.6 = ")]
    [InlineData("V1.6 = 62 V on sl", "V1.6 = 62 V on slow")]
    public void First_way_on_is_the_one_meant(string typed, string line) => Assert.Equal(line, Suggest.Run(typed)[0].Line);

    [Fact]
    public void Figure_is_followed_by_kinds_of_reading() =>
        Assert.Equal(["V", "V ac", "V ripple"], Suggest.Run("HT1 = 280 ").Take(3).Select(s => s.Shown));

    [Fact]
    public void Kind_is_followed_by_setups() =>
        Assert.Equal(["on bench", "on slow", "on cold"], Suggest.Run("HT1 = 280 V ").Select(s => s.Shown));

    [Fact]
    public void Power_off_offers_ohms_first()
    {
        var cold = new SuggestReading(SheetReader.Read(Text).Value!, [Setup.Cold, Setup.Default]);

        Assert.Equal("ohm", cold.Run("R1 = 100 ")[0].Shown);
    }

    [Fact]
    public void Point_says_what_it_is() =>
        Assert.StartsWith("anode of V1 12AX7", Suggest.Run("V1.6")[0].Detail, StringComparison.Ordinal);

    [Theory]
    [InlineData("XYZ")]
    [InlineData("V1.6 = ")]
    public void Nothing_is_suggested_where_only_the_person_knows(string typed) => Assert.Empty(Suggest.Run(typed));
}
