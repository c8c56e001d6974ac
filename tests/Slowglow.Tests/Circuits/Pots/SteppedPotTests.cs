using Slowglow.Sheets.Setups;
using Xunit;

namespace Slowglow.Tests.Circuits.Pots;

/// <summary>Stepped pots and ladder attenuators: decibels by definition, 20 log of the ratio.</summary>
public sealed class SteppedPotTests
{
    private static readonly SheetOnBench Ladder = SheetOnBench.From(
        """
        sheet: 1
        unit: Test bed
        mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
        controls: { LEVEL: 100 %, TONE: 50 % }
        parts:
          T1:
            is: transformer 5 VA
            windings:
              P: { pins: 1-2, volts: 230 V }
              S: { pins: 3-4, volts: 6 V }
          W1: wire MAINS.L -> T1.1
          W2: wire MAINS.N -> T1.2
          W3: wire T1.4 -> GND
          R9: 1k T1.3 -> GND
          VR1: attenuator 10k 23-step 2dB LEVEL top=IN wiper=OUT bottom=GND
          VR2: pot 10k lin 5-step TONE top=IN wiper=MID bottom=GND
          R1: 10M OUT -> GND
        signal: { in: IN, out: OUT, source: 1, level: 1 V, load: none }
        """
    );

    private static double Decibels(int step)
    {
        var setup = new Setup
        {
            Name = "set",
            Controls = new Dictionary<string, double> { ["LEVEL"] = step / 22.0 },
        };
        return 20 * Math.Log10(Ladder.Volts("OUT 1kHz", setup));
    }

    [Theory]
    [InlineData(22, 0)]
    [InlineData(21, -2)]
    [InlineData(12, -20)]
    [InlineData(2, -40)]
    public void Each_step_is_two_decibels(int step, double decibels) => Assert.Equal(decibels, Decibels(step), 0.1);

    [Fact]
    public void The_lowest_step_is_silence() => Assert.True(Decibels(0) < -70);

    [Theory]
    [InlineData(0.5, 0.5)]
    [InlineData(0.4, 0.5)]
    [InlineData(0.3, 0.25)]
    [InlineData(0.9, 1)]
    public void Between_steps_it_stands_at_the_nearest(double rotation, double share)
    {
        var setup = new Setup
        {
            Name = "set",
            Controls = new Dictionary<string, double> { ["TONE"] = rotation },
        };
        Assert.Equal(share, Ladder.Volts("MID 1kHz", setup), 0.002);
    }

    [Fact]
    public void A_step_has_no_doubt_about_its_setting() =>
        Assert.DoesNotContain(Ladder.Circuit.Parameters, p => p.Part is "VR1" or "VR2" && p.What == "setting");
}
