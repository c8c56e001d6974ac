using Slowglow.Circuits;
using Slowglow.Circuits.Models.Capacitor;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Xunit;

namespace Slowglow.Tests.Circuits.Faults;

/// <summary>What each way to fail does to the volts, by Ohm's law or by the trade's experience.</summary>
public sealed class NewFailureTests
{
    private static readonly SheetOnBench Amp = HighTension.Of(
        300,
        """
          V1: EL84
          R1: 220 5W HT -> V1.a
          R2: 470k V1.g -> GND
          R3: 150 2W V1.k -> GND
          R4: 1k HT -> V1.g2
          R5: 10k 2W HT -> HT2
          C2: 22u 400V HT2 -> GND
          R6: 22k 5W HT2 -> GND
          S1a: contact MODE=on HT2 -> OUT
          R7: 22k 5W OUT -> GND
          VR1: pot 100k lin LEVEL top=OUT wiper=TAKEN bottom=GND
          R8: 100k TAKEN -> GND
        """,
        "switches: { MODE: [on, off] }\ncontrols: { LEVEL: 50 % }"
    );

    /// <summary>Common practice, no source: a gassy output valve pulls its grid positive by its grid current in the grid leak, and draws more.</summary>
    [Fact]
    public void Gas_lifts_the_grid_and_the_current_follows()
    {
        var gassy = new Fault("V1", "", FailureMode.Gassy, 3e-4);
        var cathode = Amp.Volts("V1.k", null, gassy);
        Assert.True(cathode > 1.1 * Amp.Volts("V1.k"));

        // The anode's current, seen in 220 ohm, comes out of the grid by its share and through 470k.
        var anodeAmps = (Unloaded("HT", gassy) - Unloaded("V1.a", gassy)) / 220;
        var lift = Unloaded("V1.g", gassy);
        Assert.Equal(3e-4 * anodeAmps * 470e3, lift, 0.02 * lift);
    }

    private static double Unloaded(string net, Fault fault) =>
        Amp
            .Worlds.Ask(
                Setup.Default,
                [
                    [fault],
                ],
                [ReadingsReader.ReadProbe(net, Amp.Sheet).Value!],
                MeterClass.Handheld with
                {
                    InputOhms = 1e15,
                },
                cancel: TestContext.Current.CancellationToken
            )[0][0]
            .Value;

    /// <summary>Common practice, no source: an output valve whose grid pin loses contact has lost its bias.</summary>
    [Fact]
    public void A_grid_pin_without_contact_lets_the_valve_run_away()
    {
        var off = new Fault("V1", "g", FailureMode.Open);
        Assert.True(Amp.Volts("V1.k", null, off) > 1.5 * Amp.Volts("V1.k"));
        Assert.Contains(Amp.World(off).OverRatings(), o => o.Part == "V1");
    }

    [Fact]
    public void An_anode_pin_without_contact_leaves_all_current_to_the_screen()
    {
        var off = new Fault("V1", "a", FailureMode.Open);
        Assert.Equal(Amp.Volts("HT", null, off), Amp.Volts("V1.a", null, off), 0.01);
        Assert.True(Amp.Volts("R4", null, off) > 2 * Amp.Volts("R4"));
    }

    /// <summary>Ohm's law.</summary>
    [Fact]
    public void A_dirty_contact_is_its_ohms_in_series()
    {
        var dirty = new Fault("S1a", "", FailureMode.BadContact, 10e3);
        var load = 1 / ((1 / 22e3) + (1 / 83e3));
        var ratio = Amp.Volts("OUT", null, dirty) / Amp.Volts("HT2", null, dirty);
        Assert.InRange(ratio, 0.95 * load / (load + 10e3), 1.05 * load / (load + 10e3));
    }

    /// <summary>Ohm's law: 10k more in series with half a track of 100k and a load of 100k.</summary>
    [Fact]
    public void A_wiper_that_hardly_touches_is_its_ohms_in_series()
    {
        var dirty = new Fault("VR1", "wiper", FailureMode.BadContact, 10e3);
        var healthy = Amp.Volts("TAKEN") / Amp.Volts("OUT");
        var worn = Amp.Volts("TAKEN", null, dirty) / Amp.Volts("OUT", null, dirty);
        Assert.Equal(100e3 / 125e3 * 0.5, healthy, 0.01);
        Assert.Equal(100e3 / 135e3 * 0.5, worn, 0.01);
    }

    [Fact]
    public void A_dried_electrolytic_smooths_less_than_its_capacitance_says()
    {
        var dried = new Fault("C2", "", FailureMode.DriedOut, 0.12);
        var small = new Fault("C2", "", FailureMode.Drifted, 0.12);
        Assert.True(Amp.Volts("HT2 ripple", null, dried) > 1.2 * Amp.Volts("HT2 ripple", null, small));
    }

    /// <summary>End of life by makers' data sheets (reference/ageing_rules.csv): a fifth of the capacitance lost, the loss doubled or more.</summary>
    [Fact]
    public void Loss_rises_as_capacitance_falls()
    {
        double Tangent(double left) => ElectrolyteWear.SeriesOhms(22e-6, left) * 2 * Math.PI * 100 * 22e-6 * left;
        Assert.True(Tangent(0.8) > Tangent(1));
        Assert.Equal(2, Tangent(0.5) / Tangent(1), 6);
    }

    [Fact]
    public void A_diode_the_wrong_way_round_in_a_bridge_shorts_the_winding()
    {
        var turned = new Fault("D1", "", FailureMode.Backwards);
        Assert.True(Amp.Volts("MAINS", null, turned) > 10 * Amp.Volts("MAINS"));
    }

    [Fact]
    public void A_winding_through_to_the_core_is_a_short_to_chassis()
    {
        var core = new Fault("T1", "P to core", FailureMode.Short);
        Assert.True(Amp.Volts("MAINS", null, core) > 10 * Amp.Volts("MAINS"));
    }

    /// <summary>Whatever can fail says how, and no two faults of a part say the same.</summary>
    [Fact]
    public void Every_fault_has_words_of_its_own() =>
        Assert.Equal(Amp.Circuit.Faults.Count, Amp.Circuit.Faults.Select(f => FaultWords.Say(f)).Distinct().Count());

    /// <summary>The same 10 ohm in series with a wire carries the current it carries; power off it reads as ohms.</summary>
    [Fact]
    public void A_dry_joint_shows_on_the_ohmmeter()
    {
        var dry = new Fault("S1a", "", FailureMode.BadContact, 100);
        Assert.Equal(100, Amp.Volts("S1a ohm", Setup.Cold, dry), 1.5);
    }
}
