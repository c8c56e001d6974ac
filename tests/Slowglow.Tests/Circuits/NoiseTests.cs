using Slowglow.Circuits;

namespace Slowglow.Tests.Circuits;

/// <summary>Noise against its laws: Nyquist, equipartition, Schottky.</summary>
public sealed class NoiseTests
{
    private const double Boltzmann = 1.380649e-23;
    private const double Kelvin = 300;
    private const double Charge = 1.602177e-19;
    private const double Band = 20e3 - 20;

    /// <summary>sqrt(4 k T R B) (Nyquist, Physical Review 32, 1928).</summary>
    [Theory]
    [InlineData("10k", 10e3)]
    [InlineData("470k", 470e3)]
    public void A_resistor_has_its_thermal_noise(string ohms, double value)
    {
        var bench = Beds.Passive($"  R1: {ohms} OUT -> GND\n  R2: 100M IN -> GND", "{ in: IN, out: OUT, source: 1, level: 1 V }");
        var noise = bench.World().Noise()!;
        Assert.Equal(Math.Sqrt(4 * Boltzmann * Kelvin * value * Band), noise.Volts, 0.002 * noise.Volts);
        Assert.Equal("R1", noise.Sources[0].Part);
        Assert.Equal(NoiseKind.Thermal, noise.Sources[0].Kind);
    }

    /// <summary>sqrt(k T / C) over all frequencies, whatever the resistor (equipartition).</summary>
    [Theory]
    [InlineData("10k")]
    [InlineData("100k")]
    public void A_capacitor_holds_kT_over_C(string ohms)
    {
        var bench = Beds.Passive(
            $"  R1: {ohms} OUT -> GND\n  C1: 1n OUT -> GND\n  R2: 1M IN -> GND",
            "{ in: IN, out: OUT, source: 1, level: 1 V }"
        );
        var noise = bench.World().Noise(0.1, 100e6)!;
        Assert.Equal(Math.Sqrt(Boltzmann * Kelvin / 1e-9), noise.Volts, 0.02 * noise.Volts);
    }

    /// <summary>2 q I over the junction's slope resistance (Schottky, Annalen der Physik 362, 1918).</summary>
    [Fact]
    public void A_conducting_diode_has_its_shot_noise()
    {
        var bench = Beds.Build(
            Beds.Rails15,
            "  R1: 14k P15 -> OUT\n  D11: 1N4148 OUT -> GND\n  R2: 1M IN -> GND",
            "{ in: IN, out: OUT, source: 600, level: 1 mV }"
        );
        var amps = (bench.Volts("P15") - bench.Volts("OUT")) / 14e3;
        var slope = bench.World().OutputImpedance([1000])[0].Ohms;
        var shot = bench.World().Noise()!.Sources.Single(s => s.Part == "D11" && s.Kind == NoiseKind.Shot).OutputVolts;
        Assert.Equal(Math.Sqrt(2 * Charge * amps * Band) * slope, shot, 0.02 * shot);
    }

    /// <summary>Input noise times the noise gain: 18 nV per root hertz is the stated figure for field-effect inputs; 1 + 1k/100 = 11.</summary>
    [Fact]
    public void An_op_amp_multiplies_its_input_noise_by_its_noise_gain()
    {
        var bench = Beds.Build(
            Beds.Rails15,
            "  U3: TL072 3=IN 2=X 1=OUT 8=P15 4=N15\n  R1: 100 X -> GND\n  R2: 1k X -> OUT\n  R3: 100 IN -> GND",
            "{ in: IN, out: OUT, source: 50, level: 10 mV }"
        );
        var noise = bench.World().Noise()!;
        var own = noise.Sources.Single(s => s.Kind == NoiseKind.OpAmp && s.Part == "U3");
        // Below the corner of 100 Hz it rises as 1/f: the integral adds 100 Hz times ln(20 kHz / 20 Hz).
        Assert.Equal(18e-9 * 11 * Math.Sqrt(Band + (100 * Math.Log(1000))), own.OutputVolts, 0.01 * own.OutputVolts);
        Assert.Equal(own, noise.Sources[0]);
        Assert.Equal(20 * Math.Log10(bench.Volts("OUT 1kHz") / noise.Volts), noise.SignalToNoiseDecibels, 0.01);
    }

    /// <summary>2.5 / gm at the grid (Harris, RCA Review 5, 1941): 12AX7 at about 1 mA, near 1.5 k ohm, so 0.7 uV over the band, times the gain.</summary>
    [Fact]
    public void A_triode_has_its_equivalent_grid_resistance()
    {
        var bench = Beds.Build(
            Beds.HighTension,
            """
              V1: 12AX7 1=A 2=IN 3=K
              R2: 1k IN -> GND
              R3: 1k5 K -> GND
              C3: 1000u 25V K -> GND
              R4: 100k HT -> A
              C4: 1u 400V film A -> OUT
              R5: 1M OUT -> GND
            """,
            "{ in: IN, out: OUT, source: 50, level: 10 mV }"
        );
        var gain = bench.Volts("OUT 1kHz") / 0.01 * 1050 / 1000;
        var valve = bench.World().Noise()!.Sources.Single(s => s.Part == "V1" && s.Kind == NoiseKind.Shot);
        var ohms = Math.Pow(valve.OutputVolts / gain, 2) / (4 * Boltzmann * Kelvin * Band);
        Assert.InRange(ohms, 2.5 / 2.2e-3, 2.5 / 1.2e-3);
    }
}
