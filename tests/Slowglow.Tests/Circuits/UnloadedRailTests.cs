using Slowglow.Circuits;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Circuits;

/// <summary>A rail without bleeder and with its valves out stands at the crest (common practice): the reservoir holds it.</summary>
public sealed class UnloadedRailTests
{
    private static readonly Setup Out = Setup.Default with { Name = "out", ValvesOut = true };

    private static SheetOnBench Bed() =>
        Beds.Build(
            Beds.HighTension,
            """
              V1: 12AX7 1=A 2=IN 3=K
              R2: 1M IN -> GND
              R3: 1k5 K -> GND
              R4: 100k HT -> A
              C4: 1u 400V film A -> OUT
              R5: 1M OUT -> GND
              C7: 22n 400V HT -> LOOSE
              C8: 22n 400V LOOSE -> GND
            """,
            "{ in: IN, out: OUT, source: 600, level: 10 mV }"
        );

    [Theory]
    [InlineData("RAW")]
    [InlineData("HT")]
    [InlineData("A")]
    public void Reads_the_crest_of_its_winding(string net)
    {
        var answer = Bed().Ask(net, Out);
        Assert.Equal(AnswerKind.Value, answer.Kind);

        // 255 V rms at 100 mA through 100 ohm, so 265 to 275 V without load; two diodes; a meter of 10 M takes a hundredth over 100 k.
        Assert.InRange(answer.Value, 355, 392);
        Assert.InRange(answer.Sigma, 5, 20);
    }

    [Fact]
    public void In_proportion_to_the_mains()
    {
        var whole = Bed().Volts("RAW", Out);
        var half = Bed().Volts("RAW", Out with { Name = "half", MainsVolts = 115 });
        Assert.Equal(0.5, half / whole, 0.005);
    }

    /// <summary>With the dropper to its screens open the combo's later rails hang in the air: nobody is told that a capacitor stands hundreds of kilovolts.</summary>
    [Fact]
    public void Rails_that_nothing_holds_put_no_part_beyond_what_the_unit_has()
    {
        var combo = SheetOnBench.From(DemoText.Of("kittiwake-15"));
        var stress = combo.Worlds.Stress(Setup.Default, [new Fault("R2", "", FailureMode.Open)]);
        Assert.All(stress, s => Assert.False(s.Volts > 2000, $"{s.Part} stands {s.Volts:G3} V"));
        Assert.True(stress.Single(s => s.Part == "C1").Volts > 300);
    }

    [Fact]
    public void What_no_reservoir_holds_still_floats() => Assert.Equal(AnswerKind.Floating, Bed().Ask("LOOSE", Out).Kind);
}
