using Slowglow.Circuits;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Circuits;

/// <summary>Winding currents, ripple currents and watts over the mains cycle.</summary>
public sealed class CurrentTests
{
    private const string Bridge = """
        sheet: 1
        unit: Test bed
        mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
        parts:
          T1:
            is: transformer 30 VA
            windings:
              P: { pins: 1-2, volts: 230 V, ohms: 40 }
              S: { pins: 3-4, volts: 18 V, amps: 1.6 A, ohms: 0.6 }
          W1: wire MAINS.L -> T1.1
          W2: wire MAINS.N -> T1.2
          D1: 1N5404 T1.3 -> RAW
          D2: 1N5404 T1.4 -> RAW
          D3: 1N5404 GND -> T1.3
          D4: 1N5404 GND -> T1.4
          C1: 4700u 35V RAW -> GND
          R1: 22 50W RAW -> GND
        """;

    /// <summary>
    /// Makers' rule for a bridge with capacitor input: winding rms is 1.6 to 1.8 times the direct current (reference/secondary_current_ratios.csv
    /// gives the makers' rules); soft transformers lie lower, stiff ones higher.
    /// </summary>
    [Fact]
    public void Secondary_of_a_bridge_carries_about_1_7_times_the_direct_current()
    {
        var bench = SheetOnBench.From(Bridge);
        var dc = bench.Volts("RAW") / 22;
        var secondary = bench.World().WindingCurrents().Single(w => w.Winding == "S");
        Assert.InRange(secondary.AmpsRms / dc, 1.5, 2.2);
        Assert.Equal(0, secondary.AmpsDc, 0.02 * dc);
        Assert.Equal(1.6, secondary.RatedAmps);
    }

    /// <summary>The winding's rms squared is the load's direct current squared and the capacitor's ripple squared (no mean in the capacitor).</summary>
    [Fact]
    public void Ripple_current_of_the_reservoir_is_what_the_load_does_not_take()
    {
        var bench = SheetOnBench.From(Bridge);
        var world = bench.World();
        var dc = bench.Volts("RAW") / 22;
        var winding = world.WindingCurrents().Single(w => w.Winding == "S").AmpsRms;
        var ripple = world.CapacitorCurrents().Single(c => c.Part == "C1").AmpsRms;
        Assert.Equal(Math.Sqrt((winding * winding) - (dc * dc)), ripple, 0.05 * ripple);
    }

    [Fact]
    public void Half_wave_rectifier_draws_its_direct_current_through_the_winding()
    {
        var bench = SheetOnBench.From(
            Bridge
                .Replace("  D2: 1N5404 T1.4 -> RAW\n", "", StringComparison.Ordinal)
                .Replace("  D3: 1N5404 GND -> T1.3\n", "", StringComparison.Ordinal)
        );
        var dc = bench.Volts("RAW") / 22;
        var secondary = bench.World().WindingCurrents().Single(w => w.Winding == "S");
        Assert.Equal(dc, Math.Abs(secondary.AmpsDc), 0.03 * dc);
    }

    /// <summary>Energy: what the inlet gives (mean of volts times amperes) is what the parts turn to heat.</summary>
    [Fact]
    public void Watts_of_all_parts_add_up_to_what_the_primary_takes()
    {
        var bench = SheetOnBench.From(Bridge);
        var stress = bench.Worlds.Stress(Setup.Default, []).ToDictionary(s => s.Part, s => s.Watts);
        var load = Math.Pow(bench.Volts("RAW"), 2) / 22;
        Assert.Equal(load, stress["R1"], 0.02 * load);
        var secondary = bench.World().WindingCurrents().Single(w => w.Winding == "S").AmpsRms;
        var primary = bench.World().WindingCurrents().Single(w => w.Winding == "P").AmpsRms;
        var copper = (secondary * secondary * 0.6) + (primary * primary * 40);
        Assert.Equal(copper, stress["T1"], 0.02 * copper);
    }

    [Fact]
    public void Inlet_current_is_the_current_of_the_primary()
    {
        var bench = SheetOnBench.From(Bridge);
        var primary = bench.World().WindingCurrents().Single(w => w.Winding == "P").AmpsRms;
        Assert.Equal(bench.Volts("MAINS ac"), primary, 0.001 * primary);
    }
}
