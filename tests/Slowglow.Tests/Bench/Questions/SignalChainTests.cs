using Slowglow.Bench.Questions;
using Slowglow.Sheets.Setups;

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

    /// <summary>A mute relay that is pulled in by its supply joins the output: the way is drawn as the coil has it, not as it lies without power.</summary>
    [Fact]
    public void A_relay_joins_what_its_coil_has_pulled_in()
    {
        const string Sheet = """
            sheet: 1
            unit: Test bed
            mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
            parts:
              T1:
                is: transformer 20 VA
                windings:
                  P: { pins: 1-2, volts: 230 V, ohms: 60 }
                  S: { pins: 3-4, volts: 17 V, amps: 500 mA, ohms: 1 }
              W1: wire MAINS.L -> T1.1
              W2: wire MAINS.N -> T1.2
              W3: wire T1.4 -> GND
              D1: 1N4007 T1.3 -> RAW
              C1: 2200u 35V RAW -> GND
              K1: relay 24V 1kohm RAW -> GND
              K1a: contact K1=on MADE -> OUT
              R1: 1k IN -> MADE
              R2: 10k OUT -> GND
            signal: { in: IN, out: OUT, source: 600, level: 100 mV }
            """;
        var read = BenchUnit.From(Sheet);
        Assert.True(read.Value is not null, string.Join('\n', read.Findings));
        var unit = read.Value;
        var world = unit.Worlds.World(Setup.Default, [], TestContext.Current.CancellationToken);
        Assert.True(world.HasPulledIn("K1"));
        var joins = NetJoins.In(RelayStands.In(Setup.Default, unit.Sheet, world), unit.Sheet);
        Assert.Equal(joins.Of("OUT"), joins.Of("MADE"));
        Assert.NotEqual("OUT", NetJoins.In(Setup.Default, unit.Sheet).Of("MADE"));

        var held = Setup.Default with
        {
            Name = "held",
            Switches = new Dictionary<string, string> { ["K1"] = "off" },
        };
        Assert.Null(unit.Worlds.World(held, [], TestContext.Current.CancellationToken).HasPulledIn("K1"));
        Assert.Equal(held.Switches["K1"], RelayStands.In(held, unit.Sheet, world).Switches["K1"]);
    }
}
