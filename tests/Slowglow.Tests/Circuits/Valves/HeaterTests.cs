using Slowglow.Circuits;
using Slowglow.Circuits.Models.Valve;
using Slowglow.Sheets.Setups;
using Xunit;

namespace Slowglow.Tests.Circuits.Valves;

/// <summary>Heaters that are drawn: what they make of the emission, in parallel and in a chain. Common practice, no source, but for the laws named.</summary>
public sealed class HeaterTests
{
    private static SheetOnBench WithHeaters(string heaters) =>
        SheetOnBench.From(
            $$"""
            sheet: 1
            unit: Test bed
            mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
            parts:
              T1:
                is: transformer 60 VA
                windings:
                  P: { pins: 1-2, volts: 230 V, ohms: 10 }
                  S: { pins: 3-4, volts: 200 V, ohms: 60 }
                  LT: { pins: 5-6, volts: 18.9 V, ohms: 0.02 }
              W1: wire MAINS.L -> T1.1
              W2: wire MAINS.N -> T1.2
              W3: wire T1.6 -> GND
              W4: wire T1.4 -> GND
              D1: 1N4007 T1.3 -> HT
              C1: 47u 450V HT -> GND
              R1: 100k HT -> V1.a
              R2: 1k5 V1.k -> GND
              R3: 100k HT -> V2.a
              R4: 1k5 V2.k -> GND
              R5: 100k HT -> V3.a
              R6: 1k5 V3.k -> GND
              R7: 1M V1.g -> GND
              R8: 1M V2.g -> GND
              R9: 1M V3.g -> GND
            {{heaters}}
            """
        );

    private const string Chain = """
          V1: 6AV6T 3=T1.5 4=X1
          V2: 6AV6T 3=X1 4=X2
          V3: 6AV6T 3=X2 4=GND
        devices:
          6AV6T: { like: 6SN7GT, pinout: { 1: g, 2: k, 3: h, 4: h, 7: a } }
        """;

    private static double Milliamps(SheetOnBench bench, string valve, Setup? setup = null, params Fault[] faults) =>
        bench.Volts($"{valve}.k", setup, faults) / 1.5;

    [Fact]
    public void A_chain_shares_its_volts_and_every_valve_works()
    {
        var bench = WithHeaters(Chain);
        Assert.Equal(6.3, bench.Volts("X1 - X2 ac"), 0.1);
        Assert.All(["V1", "V2", "V3"], v => Assert.InRange(Milliamps(bench, v), 1, 3));
    }

    [Theory]
    [InlineData("V1")]
    [InlineData("V2")]
    [InlineData("V3")]
    public void One_heater_open_in_a_chain_takes_all_valves_with_it(string open)
    {
        var bench = WithHeaters(Chain);
        var burnt = new Fault(open, "heater", FailureMode.Open);
        Assert.All(["V1", "V2", "V3"], v => Assert.InRange(Milliamps(bench, v, null, burnt), 0, 0.01));
    }

    [Fact]
    public void One_heater_open_in_parallel_takes_only_its_own_valve()
    {
        var bench = WithHeaters(
            Chain
                .Replace("4=X1", "4=Y1", StringComparison.Ordinal)
                .Replace("3=X1 4=X2", "3=T1.5 4=Y2", StringComparison.Ordinal)
                .Replace("3=X2 4=GND", "3=T1.5 4=Y3", StringComparison.Ordinal)
                .Replace(
                    "devices:",
                    "  R11: 21 5W Y1 -> GND\n  R12: 21 5W Y2 -> GND\n  R13: 21 5W Y3 -> GND\ndevices:",
                    StringComparison.Ordinal
                )
        );
        var burnt = new Fault("V2", "heater", FailureMode.Open);
        Assert.InRange(Milliamps(bench, "V2", null, burnt), 0, 0.01);
        Assert.All(["V1", "V3"], v => Assert.InRange(Milliamps(bench, v, null, burnt), 1, 3));
    }

    [Fact]
    public void A_heater_short_of_volts_starves_the_valve()
    {
        var parts = Chain
            .Replace("3=T1.5 4=X1", "3=T1.5 4=X0", StringComparison.Ordinal)
            .Replace("devices:", "  R10: {0} 5W X0 -> X1\ndevices:", StringComparison.Ordinal);
        double At(string ohms) => Milliamps(WithHeaters(parts.Replace("{0}", ohms, StringComparison.Ordinal)), "V1");
        var full = At("10m");
        Assert.InRange(At("3") / full, 0.97, 1.001);
        Assert.InRange(At("22") / full, 0.7, 0.97);
        Assert.InRange(At("68") / full, 0, 0.3);
    }

    [Fact]
    public void Warmth_falls_with_volts_and_is_all_there_at_the_rated_ones()
    {
        Assert.Equal(1, CathodeWarmth.Of(1));
        Assert.Equal(1, CathodeWarmth.Of(0.9));
        var falling = Enumerable.Range(0, 19).Select(n => CathodeWarmth.Of(0.9 - (0.05 * n))).ToList();
        Assert.Equal(falling.OrderDescending(), falling);
        Assert.InRange(CathodeWarmth.Of(0.7), 0.75, 0.95);
        Assert.InRange(CathodeWarmth.Of(0.4), 0, 0.15);
        Assert.InRange(CathodeWarmth.Of(0), 0, 1e-6);
    }

    /// <summary>Ohm's law: the leak and the cathode resistor divide the heater's volts, the valve holding its cathode with 1/gm beside it.</summary>
    [Fact]
    public void A_leak_from_heater_to_cathode_puts_mains_on_the_cathode()
    {
        var bench = WithHeaters(Chain);
        var leak = new Fault("V1", "h-k", FailureMode.Leaky, 47e3);
        var dead = new Fault("V1", "", FailureMode.Dead);
        Assert.Equal(18.9 * 1.5 / 48.5, bench.Volts("V1.k ac", null, leak, dead), 0.02);
        Assert.InRange(bench.Volts("V1.k ac", null, leak), 0.1, 0.55);
        Assert.True(bench.Volts("V1.a ac", null, leak) > 10 * bench.Volts("V1.a ac"));
    }

    [Fact]
    public void Pulling_a_valve_of_a_chain_puts_the_others_out()
    {
        var pulled = new Setup { Name = "pulled", Pulled = ["V2"] };
        Assert.InRange(Milliamps(WithHeaters(Chain), "V1", pulled), 0, 0.01);
    }
}
