using Slowglow.Bench.Questions;
using Slowglow.Sheets.Setups;
using Xunit;

namespace Slowglow.Tests.Bench.Questions;

public class SignalChainTests
{
    [Fact]
    public void The_first_channel_runs_through_its_own_stages_to_the_loudspeaker()
    {
        List<string> chain = [.. SignalChain.Of(Demo.Combo.Sheet, Demo.Combo.Sheet.Signals[0], Setup.Default)];
        Assert.Equal("IN1", chain[0]);
        Assert.Equal("SPK", chain[^1]);
        Assert.Contains("V1.6", chain);
        Assert.Contains("V2.1", chain);
        Assert.Contains("V3.1", chain);
        Assert.True(chain.IndexOf("V1.6") < chain.IndexOf("VW1") && chain.IndexOf("VW1") < chain.IndexOf("V2.1"));
    }

    [Fact]
    public void The_other_channel_is_left_out()
    {
        List<string> chain = [.. SignalChain.Of(Demo.Combo.Sheet, Demo.Combo.Sheet.Signals[0], Setup.Default)];
        Assert.DoesNotContain("V1.1", chain);
        Assert.DoesNotContain("V2.6", chain);
        Assert.DoesNotContain("VW2", chain);
    }
}
