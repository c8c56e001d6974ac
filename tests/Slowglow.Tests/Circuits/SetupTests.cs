using Slowglow.Circuits;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Circuits;

/// <summary>Every key of a setup changes the world as it should: common practice, no source, unless a law is named.</summary>
public sealed class SetupTests
{
    private const string Signal = "{ in: IN, out: OUT, source: 10k, level: 100 mV, load: 10k }";

    private static readonly Lazy<SheetOnBench> Amplifier = new(() =>
        Beds.Build(
            Beds.HighTension.Replace(
                "parts:",
                "switches:\n  VOICE: [flat, bright]\ncontrols:\n  VOLUME: 50 %\nparts:",
                StringComparison.Ordinal
            ),
            """
              V1: 12AX7 1=A 2=G 3=K
              R9: 470k 1W HT -> GND
              R2: 1M IN -> GND
              C5: 100n IN -> G
              R6: 1M G -> GND
              R3: 1k5 K -> GND
              R4: 100k HT -> A
              C4: 100n 400V film A -> TOP
              VR1: pot 1M log VOLUME top=TOP wiper=OUT bottom=GND
              S1a: contact VOICE=bright TOP -> EDGE
              C6: 1n 400V film EDGE -> OUT
            """,
            Signal
        )
    );

    private static Setup In(string keys)
    {
        var read = ReadingsReader.Read($"setups:\n  here: {{ {keys} }}\nreadings: []\n", Amplifier.Value.Sheet);
        Assert.False(read.HasErrors, string.Join('\n', read.Findings));
        return read.Value!.Setups.Single(s => s.Name == "here");
    }

    private static double Volts(string probe, string keys) => Amplifier.Value.Volts(probe, In(keys));

    [Fact]
    public void Part_mains_lowers_every_rail()
    {
        var (full, half) = (Volts("RAW", "mains: 230 V"), Volts("RAW", "mains: 115 V"));
        Assert.InRange(half / full, 0.47, 0.53);
    }

    [Fact]
    public void A_limiter_lamp_takes_its_share()
    {
        var (without, with) = (Volts("HT", "mains: 230 V"), Volts("HT", "limiter: 25 W"));
        Assert.InRange(with / without, 0.3, 0.99);
        Assert.True(Volts("HT", "limiter: 100 W") > with);
    }

    [Fact]
    public void With_the_power_off_there_are_no_volts_but_there_are_ohms()
    {
        Assert.Equal(0, Volts("HT", "power: off"));
        Assert.Equal(1500, Volts("R3 ohm", "power: off"), 20.0);
        Assert.Equal(AnswerKind.NotApplicable, Amplifier.Value.Ask("R3 ohm", In("power: on")).Kind);
    }

    [Theory]
    [InlineData("valves: out")]
    [InlineData("pulled: [V1]")]
    public void Without_its_valve_a_stage_draws_nothing(string keys)
    {
        Assert.Equal(0, Volts("K", keys), 1e-3);
        Assert.Equal(Volts("HT", keys), Volts("A", keys), 5.0);
        Assert.True(Volts("A", "valves: in") < Volts("HT", "valves: in") - 20);
    }

    [Fact]
    public void Lifted_legs_open_their_end_only()
    {
        // With either end of the anode resistor off, nothing is left that holds the anode; the rail stays.
        Assert.False(Amplifier.Value.Ask("A", In("lifted: [R4]")).Value > 5);
        Assert.False(Amplifier.Value.Ask("A", In("lifted: [R4.2]")).Value > 5);
        Assert.True(Volts("HT", "lifted: [R4]") > 300);

        // A cathode resistor off: no current, and the anode stands at the rail.
        Assert.Equal(Volts("HT", "lifted: [R3]"), Volts("A", "lifted: [R3]"), 8.0);
    }

    [Fact]
    public void A_switch_changes_what_its_contacts_join()
    {
        var (flat, bright) = (Volts("OUT 5kHz", "VOICE: flat"), Volts("OUT 5kHz", "VOICE: bright"));
        Assert.True(bright > 1.5 * flat);
        Assert.Equal(Volts("OUT 5kHz", "mains: 230 V"), flat, 1e-9);
    }

    /// <summary>A log pot has 15 % of its track below the wiper at half rotation; antilog 85 %; linear a half.</summary>
    [Theory]
    [InlineData("log", 0.15)]
    [InlineData("antilog", 0.85)]
    [InlineData("lin", 0.5)]
    public void A_control_follows_its_taper(string taper, double share)
    {
        var bench = SheetOnBench.From(
            $"sheet: 1\nunit: Test bed\ncontrols:\n  VOLUME: 100 %\nparts:\n  VR1: pot 1k {taper} VOLUME top=IN wiper=OUT bottom=GND\n"
                + "signal: { in: IN, out: OUT, source: 1, level: 1 V }\n"
        );
        double At(double rotation) =>
            bench.Volts(
                "OUT 1kHz",
                new Setup
                {
                    Name = "here",
                    Controls = new Dictionary<string, double> { ["VOLUME"] = rotation },
                }
            );
        Assert.Equal(share, At(0.5), 0.01);
        Assert.Equal(1, At(1), 0.01);
        Assert.Equal(0, At(0), 0.01);
    }

    [Fact]
    public void A_control_at_nothing_silences_and_full_up_is_loudest()
    {
        Assert.True(Volts("OUT 1kHz", "VOLUME: 0 %") < 0.02 * Volts("OUT 1kHz", "VOLUME: 100 %"));
        Assert.True(Volts("OUT 1kHz", "VOLUME: 100 %") > 3 * Volts("OUT 1kHz", "VOLUME: 50 %"));
    }

    /// <summary>Ohm's law: a load as large as the output impedance halves the level.</summary>
    [Fact]
    public void A_load_takes_its_share_of_the_level()
    {
        var world = Amplifier.Value.WorldIn(In("load: none"));
        var ohms = world.OutputImpedance([1000])[0].Ohms;
        var level = FormattableString.Invariant($"load: {ohms:F0} ohm");
        var loaded = Volts("OUT 1kHz", level);
        var unit = Volts("OUT 1kHz", "load: 100M");

        // The output is resistive but for its coupling capacitor.
        Assert.Equal(0.5, loaded / unit, 0.02);
    }

    [Fact]
    public void An_input_shorted_takes_its_hum_and_noise_away()
    {
        const string Open = "VOLUME: 100 %";
        const string Shorted = "VOLUME: 100 %, input: shorted";
        var (open, shorted) = (
            Amplifier.Value.WorldIn(In(Open)).Noise()!.Volts,
            Amplifier.Value.WorldIn(In(Shorted)).Noise()!.Volts
        );
        Assert.True(shorted < 0.9 * open);
        Assert.True(Volts("OUT 1kHz", Shorted) < 1e-3 * Volts("OUT 1kHz", Open));
        Assert.True(Amplifier.Value.WorldIn(In("input: shorted")).InputImpedance([1000])[0].Ohms < 0.1);
    }

    [Fact]
    public void A_driven_input_is_held_by_the_generators_resistance()
    {
        const string Sheet =
            "sheet: 1\nunit: Test bed\nparts:\n  R1: 1M IN -> GND\n  R2: 1M IN -> OUT\n  R3: 1M OUT -> GND\n"
            + "signal: { in: IN, out: OUT, source: 10k, level: 1 V }\n";
        var bench = SheetOnBench.From(Sheet);
        var (open, driven) = (new Setup { Name = "a" }, new Setup { Name = "b", Input = InputState.Driven });
        var shorted = new Setup { Name = "c", Input = InputState.Shorted };

        // Open: 1M beside 1M + 1M; driven: 10k; shorted: the second resistor alone to ground.
        double Ohms(Setup setup) => bench.WorldIn(setup).OutputImpedance([1000])[0].Ohms;
        Assert.Equal(Ohms(open), Ohms(driven), 1e-6 * Ohms(open));
        Assert.Equal(500e3, Ohms(shorted), 100.0);
        Assert.Equal(667e3, bench.WorldIn(open).InputImpedance([1000])[0].Ohms, 500.0);
        Assert.Equal(9.85e3, bench.WorldIn(driven).Settled ? Held(bench, driven) : double.NaN, 50.0);
    }

    /// <summary>Ohms at the input as the world stands, by a meter with the power off.</summary>
    private static double Held(SheetOnBench bench, Setup setup) => bench.Volts("IN ohm", setup with { PowerOff = true });

    [Fact]
    public void An_unknown_input_state_is_refused_with_a_remedy()
    {
        var read = ReadingsReader.Read("setups:\n  here: { input: sideways }\nreadings: []\n", Amplifier.Value.Sheet);
        Assert.Contains(read.Findings, f => f.Remedy.Contains("input: shorted", StringComparison.Ordinal));
    }
}
