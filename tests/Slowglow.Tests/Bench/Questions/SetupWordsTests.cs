using Slowglow.Bench.Questions;
using Slowglow.Sheets.Setups;
using Xunit;

namespace Slowglow.Tests.Bench.Questions;

public class SetupWordsTests
{
    private static readonly Setup[] Known = [Setup.Default, Setup.Cold];

    [Theory]
    [InlineData("cold")]
    [InlineData(" COLD ")]
    public void A_known_setup_goes_by_its_name(string words) => Assert.Same(Setup.Cold, Read(words));

    [Theory]
    [InlineData("mains=110V limiter=40W valves=out")]
    [InlineData("mains = 110 V, limiter = 40 W, valves = out")]
    [InlineData("valves=out;mains=110;limiter=40")]
    public void Keys_may_be_spaced_in_any_way(string words)
    {
        var setup = Read(words);
        Assert.Equal((110.0, 40.0, true, false), (setup.MainsVolts, setup.LimiterWatts, setup.ValvesOut, setup.PowerOff));
    }

    [Fact]
    public void Lists_and_controls_are_read()
    {
        var setup = Read("pulled=V1,V2 lifted=R5 VOLUME1=30%");
        Assert.Equal(["V1", "V2"], setup.Pulled);
        Assert.Equal(["R5"], setup.Lifted);
        Assert.Equal(0.3, setup.Controls["VOLUME1"], 9);
    }

    [Theory]
    [InlineData("mains=lots")]
    [InlineData("colour=red")]
    [InlineData("pulled=V77")]
    public void What_is_wrong_is_quoted(string words)
    {
        var read = SetupWords.Read(words, Demo.Combo.Sheet, Known);
        Assert.Null(read.Value);
        Assert.Contains(read.Findings, f => f.Text.StartsWith($"setup \"{words}\": ", StringComparison.Ordinal));
    }

    private static Setup Read(string words)
    {
        var read = SetupWords.Read(words, Demo.Combo.Sheet, Known);
        Assert.Empty(read.Findings);
        return read.Value!;
    }
}
