using Xunit;

namespace Slowglow.Tests.Circuits.OpAmps;

/// <summary>An op-amp gives no more than its short-circuit current: 25 mA for a TL072, 38 mA for an NE5532 (data sheets, from memory).</summary>
public sealed class OutputLimitTests
{
    private static SheetOnBench Follower(string type, string load) =>
        HighTension.Of(
            30,
            $"  U1: {type} 8=HT 4=GND 3=IN 2=OUT 1=OUT\n  R1: 10k HT -> IN\n  R2: 10k IN -> GND\n  R3: {load} 5W OUT -> GND"
        );

    [Theory]
    [InlineData("TL072", 10)]
    [InlineData("TL072", 50)]
    public void Holds_its_current_into_too_small_a_load(string type, double ohms)
    {
        var volts = Follower(type, FormattableString.Invariant($"{ohms}")).Volts("OUT");
        Assert.InRange(volts / ohms, 0.022, 0.026);
    }

    [Fact]
    public void Minds_nothing_with_a_usual_load()
    {
        var bench = Follower("TL072", "2k");
        Assert.Equal(bench.Volts("IN"), bench.Volts("OUT"), 0.02);
    }
}
