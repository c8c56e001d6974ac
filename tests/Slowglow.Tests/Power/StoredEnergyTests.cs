using Slowglow.Circuits;
using Slowglow.Power.Energy;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.Circuits;

namespace Slowglow.Tests.Power;

/// <summary>Discharge times against the exponential by hand, with a bleeder, a leaky one, an open one.</summary>
public sealed class StoredEnergyTests
{
    private const string Bleeder = "  R9: 220k 1W RAW -> GND\n";

    private static SheetOnBench Bench() =>
        SheetOnBench.From(
            """
            sheet: 1
            unit: Test bed
            mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
            parts:
              T1:
                is: transformer 60 VA
                windings:
                  P: { pins: 1-2, volts: 230 V, ohms: 20 }
                  S: { pins: 3-4, volts: 255 V, amps: 100 mA, ohms: 100 }
              W1: wire MAINS.L -> T1.1
              W2: wire MAINS.N -> T1.2
              D1: 1N4007 T1.3 -> RAW
              D2: 1N4007 T1.4 -> RAW
              D3: 1N4007 GND -> T1.3
              D4: 1N4007 GND -> T1.4
              C1: 47u 450V RAW -> GND
            """
                + "\n"
                + Bleeder
        );

    private static StoredCharge Charge(SheetOnBench bench, params Fault[] faults) =>
        new StoredEnergyQuestion(bench.Worlds)
            .Ask(faults, TestContext.Current.CancellationToken)
            .Single(c => c.Capacitor == "C1");

    private static void Exponential(StoredCharge charge, double ohms)
    {
        var to60 = ohms * 47e-6 * Math.Log(charge.Volts / 60);
        var to35 = ohms * 47e-6 * Math.Log(charge.Volts / 35);
        Assert.Equal(to60, charge.SecondsTo60, 0.02 * to60);
        Assert.Equal(to35, charge.SecondsTo35, 0.02 * to35);
    }

    [Fact]
    public void One_reservoir_falls_as_an_exponential()
    {
        var bench = Bench();
        var charge = Charge(bench);
        Assert.Equal(bench.Volts("RAW"), charge.Volts, 1);
        Assert.Equal(47e-6 * charge.Volts * charge.Volts / 2, charge.Joules, 1e-3);
        Exponential(charge, 220e3);
        Assert.Equal("R9", charge.Discharger);
        Assert.True(charge.SecondsWithout > 10 * charge.SecondsTo60);
        Assert.True(charge.CallsForCaution);
    }

    [Fact]
    public void A_leaky_reservoir_falls_faster_and_an_open_bleeder_leaves_it_standing()
    {
        var bench = Bench();
        var usual = Charge(bench).SecondsTo60;
        Exponential(Charge(bench, new Fault("C1", "", FailureMode.Leaky, 100e3)), 220e3 * 100e3 / 320e3);
        Assert.True(Charge(bench, new Fault("R9", "", FailureMode.Open)).SecondsTo60 > 20 * usual);
    }

    /// <summary>Two reservoirs joined by a resistor share their charge first, then fall together.</summary>
    [Fact]
    public void Two_reservoirs_fall_as_the_two_exponentials_of_their_network()
    {
        var times = new Decay(
            new double[,]
            {
                { 220e3, 220e3 },
                { 220e3, 221e3 },
            },
            [47e-6, 100e-6]
        ).Times([350, 340], [60]);
        var together = 220e3 * 147e-6 * Math.Log(((350 * 47) + (340 * 100)) / 147.0 / 60);
        Assert.Equal(together, times[0, 0], 0.01 * together);
        Assert.Equal(together, times[1, 0], 0.01 * together);
    }

    [Fact]
    public void Resistors_that_discharge_in_time()
    {
        foreach (var row in Published.Table("discharge_resistors"))
        {
            var ohms = DischargeResistor.LargestOhms(
                Published.Number(row["start_peak_volts"]),
                Published.Number(row["capacitor_microfarads"]) * 1e-6,
                Published.Number(row["target_volts"]),
                Published.Number(row["time_seconds"])
            );
            var published = Published.Number(row["max_resistor_megohms"]) * 1e6;
            Assert.Equal(published, ohms, 0.01 * published);
        }
    }

    [Fact]
    public void A_resistor_for_the_clip_leads()
    {
        var tool = DischargeResistor.For(350, 47e-6)!;
        Assert.InRange(350 / tool.Ohms, 0, 0.1);
        Assert.Equal(350 * 350 / tool.Ohms, tool.CrestWatts, 1e-6);
        Assert.True(5 * tool.RatedWatts >= tool.CrestWatts);
        Assert.Null(DischargeResistor.For(40, 1e-3));
    }

    [Fact]
    public void Demo_combo_holds_its_rail_until_the_bleeder_has_emptied_it()
    {
        var bench = SheetOnBench.From(DemoText.Of("kittiwake-15"));
        var charges = new StoredEnergyQuestion(bench.Worlds).Ask([], TestContext.Current.CancellationToken);
        var reservoir = charges.Single(c => c.Capacitor == "C1");
        var pulled = bench.Volts("HT1", Setup.Default with { Name = "out", ValvesOut = true });
        Assert.Equal(pulled, reservoir.Volts, 1);
        Assert.True(reservoir.SecondsTo60 > 2);
        Assert.Equal("R1", reservoir.Discharger);
    }
}
