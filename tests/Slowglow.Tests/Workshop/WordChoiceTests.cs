using Slowglow.Workshop.Words;

namespace Slowglow.Tests.Workshop;

public sealed class WordChoiceTests
{
    [Theory]
    [InlineData("The anode of V1 is low.", "The plate of V1 is low.")]
    [InlineData("Valves out, HT at 280 V.", "Tubes out, B+ at 280 V.")]
    [InlineData("HT1 and V1.HT keep their names", "HT1 and V1.HT keep their names")]
    [InlineData("unearthed, valveless", "unearthed, valveless")]
    [InlineData("Mains and HT.", "Mains and B+.")]
    public void Only_whole_words_of_the_program_change(string valve, string tube)
    {
        Assert.Equal(tube, WordChoice.Say(valve, TradeWords.Tube));
        Assert.Equal(valve, WordChoice.Say(valve, TradeWords.Valve));
    }

    [Theory]
    [InlineData("mains: 110 V, tubes: out", "mains: 110 V, valves: out")]
    [InlineData("Tubes : out", "valves : out")]
    [InlineData("valves: out", "valves: out")]
    public void Both_words_are_understood_in_a_setup(string typed, string understood) =>
        Assert.Equal(understood, WordChoice.UnderstandKeys(typed));
}
