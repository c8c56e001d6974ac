using System.Globalization;
using Slowglow.Bench.Sums;
using Slowglow.Tests.Devices;
using Xunit;

namespace Slowglow.Tests.Bench.Sums;

/// <summary>The bench sums beside published figures, and with what cannot be.</summary>
public sealed class SumTests
{
    private static readonly string Tables = Path.Combine(AppContext.BaseDirectory, "reference");

    public static TheoryData<string> Stages() =>
        [
            .. ValveRow
                .Read("valve_rc_coupled_stages.csv")
                .Where(r => r["valve"] is "12AX7" or "12AU7" && !r["source"].StartsWith("Brimar", StringComparison.Ordinal))
                .Where(r => r.Has("gain"))
                .Take(16)
                .Select(r =>
                    r.Label("supply_volts", "anode_load_kilohms", "cathode_resistor_ohms", "following_grid_leak_kilohms")
                ),
        ];

    public static TheoryData<string, double> Bands() =>
        [
            .. Lines("letter_and_colour_codes.csv")
                .Where(l => l[0] == "IEC 60062 colour example")
                .Select(l => (l[1], double.Parse(l[3], CultureInfo.InvariantCulture) * (l[4] == "kilohm" ? 1e3 : 1))),
        ];

    public static TheoryData<string> Discharges() =>
        [.. Lines("discharge_resistors.csv").Skip(1).Select(l => string.Join(',', l.Take(5)))];

    public static TheoryData<string> Rectifiers() =>
        [
            .. Lines("rectifier_capacitor_input.csv")
                .Skip(1)
                .Where(l => l[1] is "10" or "20" && l[2] is "2" or "5" or "10")
                .Select(l => string.Join(',', l.Take(7))),
        ];

    /// <summary>Makers' tables of resistance-coupled stages: gain within a tenth.</summary>
    [Theory]
    [MemberData(nameof(Stages))]
    public void Valve_stage_has_the_gain_of_the_makers_table(string name)
    {
        var row = ValveRow
            .Read("valve_rc_coupled_stages.csv")
            .First(r =>
                r.Label("supply_volts", "anode_load_kilohms", "cathode_resistor_ohms", "following_grid_leak_kilohms") == name
            );
        var answer = Sum.Of(
            "valve-stage",
            ("valve", row["valve"]),
            ("supply", row["supply_volts"] + " V"),
            ("anode", row["anode_load_kilohms"] + "k"),
            ("cathode", row["cathode_resistor_ohms"]),
            ("next", row["following_grid_leak_kilohms"] + "k")
        );
        Assert.InRange(answer.Figure("gain at 1 kHz"), row.Number("gain") * 0.9, row.Number("gain") * 1.1);
        Assert.NotNull(answer.LoadLine);
        Assert.InRange(answer.LoadLine.AnodeVolts, 1, row.Number("supply_volts"));
    }

    /// <summary>Common practice: R2 / R1, and one more where it does not turn the signal round.</summary>
    [Theory]
    [InlineData("inverting", 10)]
    [InlineData("non-inverting", 11)]
    public void Op_amp_stage_has_the_gain_of_its_resistors(string form, double gain)
    {
        var answer = Sum.Of("op-amp-stage", ("form", form));
        Assert.InRange(answer.Figure("gain at 1 kHz"), gain * 0.995, gain * 1.005);
        // 3 MHz over the noise gain of 11 (gain-bandwidth of the library's TL072, from memory of the data sheet).
        Assert.InRange(answer.Figure("down by 3 dB at"), 230e3, 310e3);
    }

    [Theory]
    [MemberData(nameof(Bands))]
    public void Bands_read_as_in_the_published_examples_and_back(string bands, double ohms)
    {
        var answer = Sum.Of("colours", ("bands", bands));
        Assert.Contains(Slowglow.Quantities.Engineering.Format(ohms, "ohm"), answer.Words("value"), StringComparison.Ordinal);
        var tolerance = answer.Words("tolerance");
        var count = bands.Split(' ').Length;
        var back = Sum.Of("colours", ("bands", $"{Sum.Text(ohms)} {tolerance}")).Words("bands");
        Assert.True(back == bands || count == 5 && back.Split(' ').Length == 4, back);
    }

    [Theory]
    [MemberData(nameof(Discharges))]
    public void Resistor_discharges_in_the_time_of_the_table(string line)
    {
        var f = line.Split(',').Select(x => double.Parse(x, CultureInfo.InvariantCulture)).ToArray();
        var answer = Sum.Of(
            "discharge",
            ("volts", Sum.Text(f[0])),
            ("farads", Sum.Text(f[1]) + "u"),
            ("safe", Sum.Text(f[2])),
            ("ohms", Sum.Text(f[4]) + "M")
        );
        Assert.InRange(answer.Figure("falls to"), f[3] * 0.99, f[3] * 1.01);
    }

    /// <summary>Periodic steady states of ideal rectifiers; ours have real diodes, a volt or two in 325.</summary>
    [Theory]
    [MemberData(nameof(Rectifiers))]
    public void Reservoir_gives_the_published_volts_ripple_and_current(string line)
    {
        const double Load = 5e3;
        var f = line.Split(',');
        var figures = f.Skip(1).Select(x => double.Parse(x, CultureInfo.InvariantCulture)).ToArray();
        var dc = figures[2] * 230 * Math.Sqrt(2);
        var answer = Sum.Of(
            "reservoir",
            ("rms", "230"),
            ("form", f[0] == "full" ? "bridge" : "one diode"),
            ("ohms", Sum.Text(Load * figures[1] / 100)),
            ("farads", Sum.Text(figures[0] / (100 * Math.PI * Load))),
            ("amps", Sum.Text(dc / Load))
        );
        Assert.InRange(answer.Figure("volts dc"), dc * 0.98, dc * 1.01);
        Assert.InRange(answer.Figure("ripple of the dc"), figures[3] * 0.96, figures[3] * 1.04);
        Assert.InRange(answer.Figure("which is, times the load"), figures[5] * 0.97, figures[5] * 1.03);
    }

    /// <summary>By hand.</summary>
    [Fact]
    public void Divider_corner_level_and_parallel_come_out_as_by_hand()
    {
        Assert.Equal(93.8, Sum.Of("divider").Figure("middle"), 0.06);
        Assert.Equal(55.6, Sum.Of("divider", ("load", "100k")).Figure("middle"), 0.06);
        Assert.Equal(7.23, Sum.Of("corner").Figure("3 dB down"), 0.01);
        Assert.Equal(5.03, Sum.Of("corner", ("ohms", ""), ("farads", "100u"), ("henries", "10")).Figure("resonance"), 0.01);
        Assert.Equal(1.23, Sum.Of("level").Figure("volts, rms"), 0.005);
        Assert.Equal(0.775, Sum.Of("level", ("level", "0 dBu")).Figure("volts, rms"), 0.001);
        Assert.Equal(11, Sum.Of("level", ("level", "15 W")).Figure("volts, rms"), 0.05);
        Assert.Equal(32e3, Sum.Of("parallel").Figure("side by side"), 50.0);
        Assert.Equal(47e3, Sum.Of("parallel", ("ohms", "100k"), ("wanted", "32k")).Figure("for"), 100.0);
    }

    /// <summary>IEC 60062 letters; three figures by common practice.</summary>
    [Theory]
    [InlineData("104K", "capacitor", 100e-9)]
    [InlineData("479", "capacitor", 4.7e-12)]
    [InlineData("222", "capacitor", 2.2e-9)]
    [InlineData("473", "resistor", 47e3)]
    [InlineData("1002", "resistor", 10e3)]
    public void Figures_on_parts_are_read(string code, string of, double value)
    {
        Assert.Equal(1, Sum.Of("codes", ("code", code), ("of", of)).Figure("value") / value, 3);
    }

    [Theory]
    [InlineData("100n", "capacitor", "104")]
    [InlineData("4p7", "capacitor", "479")]
    [InlineData("47k", "resistor", "473")]
    public void Values_are_written_as_figures(string value, string of, string code) =>
        Assert.Equal(code, Sum.Of("codes", ("code", value), ("of", of)).Words("printed as"));

    [Theory]
    [InlineData("valve-stage", "valve", "XYZ99")]
    [InlineData("valve-stage", "valve", "EL84")]
    [InlineData("valve-stage", "supply", "-300 V")]
    [InlineData("valve-stage", "supply", "5000 V")]
    [InlineData("valve-stage", "anode", "")]
    [InlineData("op-amp-stage", "chip", "12AX7")]
    [InlineData("op-amp-stage", "rails", "100 V")]
    [InlineData("divider", "upper", "100 V")]
    [InlineData("divider", "lower", "banana")]
    [InlineData("divider", "volts", "1e99")]
    [InlineData("corner", "ohms", "")]
    [InlineData("level", "level", "loud")]
    [InlineData("level", "level", "999999 dBu")]
    [InlineData("parallel", "ohms", "")]
    [InlineData("parallel", "wanted", "1M")]
    [InlineData("colours", "bands", "yellow mauve")]
    [InlineData("colours", "bands", "gold gold gold gold")]
    [InlineData("colours", "bands", "123456 7 %")]
    [InlineData("codes", "code", "hello")]
    [InlineData("reservoir", "amps", "0")]
    [InlineData("discharge", "safe", "500 V")]
    public void What_cannot_be_gets_a_sentence(string sum, string field, string text)
    {
        var worked = Sum.Raw(sum, (field, text));
        Assert.Null(worked.Value);
        Assert.All(worked.Findings, f => Assert.True(f.Text.Length > 10 && f.Remedy.Length > 10, f.ToString()));
        Assert.NotEmpty(worked.Findings);
    }

    /// <summary>Every preferred value of E24 over eight decades comes back from its bands.</summary>
    [Fact]
    public void Bands_of_every_preferred_value_read_back()
    {
        for (var decade = -1; decade <= 7; decade++)
        {
            for (var step = 0; step < 24; step++)
            {
                var ohms = Slowglow.Quantities.PreferredSeries.NearestE24(Math.Pow(10, decade + (step / 24.0)));
                var bands = Slowglow.Quantities.ColourCode.Write(ohms, 0.05);
                Assert.NotNull(bands);
                var read = Slowglow.Quantities.ColourCode.Read(bands);
                Assert.Equal(1, read!.Value.Ohms / ohms, 9);
                Assert.Equal(0.05, read.Value.Tolerance);
            }
        }
    }

    private static IEnumerable<string[]> Lines(string file) =>
        File.ReadLines(Path.Combine(Tables, file)).Select(l => l.Split(','));
}
