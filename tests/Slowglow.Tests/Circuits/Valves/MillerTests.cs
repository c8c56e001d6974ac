using Slowglow.Circuits;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Circuits.Valves;

/// <summary>
/// Capacitances of a valve in the response: Cin = Cgk + Cga (1 + gain) (J. M. Miller, Scientific Papers of the Bureau of Standards 351, 1920),
/// with the makers' picofarads for a 12AX7, 1.6 and 1.7.
/// </summary>
public sealed class MillerTests
{
    private static SheetOnBench Stage(string series) =>
        Beds.Build(
            Beds.HighTension,
            $"""
              V1: 12AX7 1=A 2=G 3=K
              R2: 10M IN -> GND
              R9: {series} IN -> G
              R3: 1k5 K -> GND
              C3: 1000u 25V K -> GND
              R4: 100k HT -> A
              C4: 1u 400V film A -> OUT
              R5: 1M OUT -> GND
            """,
            "{ in: IN, out: OUT, source: 1, level: 10 mV }"
        );

    [Theory]
    [InlineData("68k", 68e3)]
    [InlineData("220k", 220e3)]
    public void A_grid_stopper_and_the_Miller_capacitance_roll_off(string series, double ohms)
    {
        var world = Stage(series).World();
        var response = world.Response(20, 200e3, 10)!;
        var gain = response.Points.First(p => p.Hertz > 900).Volts / 0.01;
        var farads = (1.6 + (1.7 * (1 + gain))) * 1e-12;
        var corner = 1 / (2 * Math.PI * ohms * farads);
        Assert.InRange(gain, 50, 70);
        Assert.Equal(corner, response.High.Hertz, 0.05 * corner);
    }

    /// <summary>Common practice: a guitar amplifier's 68 k stopper costs next to nothing below 10 kHz.</summary>
    [Fact]
    public void At_1_kHz_it_is_not_heard()
    {
        var with = Stage("68k").Volts("OUT 1kHz");
        Assert.Equal(Stage("10").Volts("OUT 1kHz"), with, 0.005 * with);
    }

    [Fact]
    public void A_pulled_valve_takes_its_capacitance_with_it()
    {
        var setup = Setup.Default with { Name = "out", ValvesOut = true };
        var bench = Stage("220k");
        Assert.Equal(0, bench.WorldIn(setup).Response([1e3, 100e3])!.Points[1].Volts, 1e-9);
        Assert.True(bench.World().Response([1e3, 100e3])!.Points[1].Volts > 1e-3);
    }
}
