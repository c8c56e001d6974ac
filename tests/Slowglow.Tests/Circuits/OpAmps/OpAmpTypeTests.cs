using Xunit;

namespace Slowglow.Tests.Circuits.OpAmps;

/// <summary>Op-amps by type: supply current, bias current, room to the rails, gain-bandwidth. Typical figures of the data sheets, from memory.</summary>
public sealed class OpAmpTypeTests
{
    /// <summary>Both halves of a dual at 30 V, outputs at mid-rail: what comes in through the supply pin.</summary>
    [Theory]
    [InlineData("TL072", 2.0, 3.6)]
    [InlineData("TL062", 0.3, 0.6)]
    [InlineData("NE5532", 6, 10)]
    [InlineData("4558", 2, 5.6)]
    [InlineData("LM358", 0.5, 2)]
    [InlineData("OPA2134", 6, 11)]
    public void Draws_what_its_sheet_says(string type, double low, double high)
    {
        var bench = HighTension.Of(
            31,
            $"  R9: 100 HT -> VP\n  U1: {type} 8=VP 4=GND 3=MID 2=A 1=A 5=MID 6=B 7=B\n  R1: 10k VP -> MID\n  R2: 10k MID -> GND\n  R3: 1M A -> GND\n  R4: 1M B -> GND"
        );
        var milliamps = (bench.Volts("HT") - bench.Volts("VP")) / 100 * 1e3;
        Assert.InRange(milliamps - (bench.Volts("VP") / 20), low, high);

        // A follower's offset moves its rail by nothing: whatever its gain, the rail's spread is that of the mains, 3 % and a little.
        Assert.InRange(bench.Ask("VP").Sigma, 0.9, 1.2);
    }

    /// <summary>A megohm in the input shows the bias current: 200 nA for an NE5532, next to nothing for a JFET input (the meter's own load on the middle takes 70 nA).</summary>
    [Theory]
    [InlineData("NE5532", 50e-9, 800e-9)]
    [InlineData("4558", 5e-9, 500e-9)]
    [InlineData("TL072", 0, 0.2e-9)]
    public void Takes_its_bias_current(string type, double low, double high)
    {
        var bench = HighTension.Of(
            30,
            $"  U1: {type} 8=HT 4=GND 3=IN 2=O 1=O\n  R1: 10k HT -> MID\n  R2: 10k MID -> GND\n  R3: 100k MID -> IN\n  R4: 10k O -> GND"
        );
        Assert.InRange(Math.Abs(bench.Volts("O") - bench.Volts("MID")) / 100e3, low, high + 1e-7);
    }

    /// <summary>At a gain of 1,000 the response is 3 dB down at a thousandth of the gain-bandwidth.</summary>
    [Theory]
    [InlineData("TL072", 3e6)]
    [InlineData("NE5532", 10e6)]
    [InlineData("741", 1e6)]
    [InlineData("4558", 3e6)]
    public void Falls_by_3_dB_at_gain_bandwidth_over_gain(string type, double gainBandwidth)
    {
        var single = type == "741";
        var pins = single ? "7=HT 4=GND 3=IN 2=X 6=OUT" : "8=HT 4=GND 3=IN 2=X 1=OUT";
        var parts =
            $"  U1: {type} {pins}\n  R1: 10k HT -> MID\n  R2: 10k MID -> GND\n  C2: 1000u 35V MID -> GND\n  R3: 100k MID -> IN\n  R4: 100 X -> Y\n  C4: 1000u 35V Y -> GND\n"
            + "  R5: 99k9 X -> OUT\n  C3: 10u bipolar GEN -> IN\nsignal: { in: GEN, out: OUT, source: 1, level: 1 mV, load: 10M }";
        var bench = HighTension.Of(30, parts);
        var hertz = gainBandwidth / 1000;
        var low = bench.Volts(FormattableString.Invariant($"OUT {hertz / 20:F0}Hz"));
        Assert.Equal(1.0, low, 0.1);
        Assert.InRange(bench.Volts(FormattableString.Invariant($"OUT {hertz:F0}Hz")) / low, 0.6, 0.8);
    }

    /// <summary>An LM358 reaches its negative rail and stays a volt and a half below the positive one; a TL072 reaches neither.</summary>
    [Theory]
    [InlineData("LM358", 0, 0.1, 1.0, 2.0)]
    [InlineData("TL072", 1, 2.5, 1, 2.5)]
    public void Leaves_its_room_to_the_rails(string type, double lowest, double low, double least, double most)
    {
        SheetOnBench Comparing(string plus, string minus) =>
            HighTension.Of(
                30,
                $"  U1: {type} 8=HT 4=GND 3={plus} 2={minus} 1=O\n  R1: 10k HT -> MID\n  R2: 11k MID -> Q\n  R3: 10k Q -> GND\n  R4: 100k O -> GND"
            );
        var up = Comparing("MID", "Q");
        Assert.InRange(up.Volts("HT") - up.Volts("O"), least, most);
        Assert.InRange(Comparing("Q", "MID").Volts("O"), lowest, low);
    }
}
