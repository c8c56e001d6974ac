using Slowglow.Circuits;

namespace Slowglow.Tests.Power;

/// <summary>The tungsten filament against reference/lamp_normalised_curve.csv, lamp_facts.csv, lamp_resistances.csv and tungsten_filament.csv.</summary>
public sealed class LampTests
{
    private static readonly TungstenLamp Sixty = new(60, 230);

    /// <summary>Published: power goes with the 1.6 power of volts.</summary>
    [Fact]
    public void Power_exponent_from_0_18_of_rated_volts_up()
    {
        var exponent = Published.Number(
            Published.Table("lamp_facts").First(r => r["quantity"] == "power exponent of voltage ratio")["value_low"]
        );
        for (var share = 0.18; share <= 1.0001; share += 0.02)
        {
            var expected = Math.Pow(share, exponent);
            Assert.Equal(expected, Sixty.Watts(share * 230) / 60, 0.03 * expected);
        }
    }

    [Fact]
    public void Cold_filament_is_a_thirteenth_to_a_sixteenth_of_the_hot_one() =>
        Assert.InRange(Sixty.HotOhms / Sixty.ColdOhms, 13, 16);

    [Fact]
    public void Worked_lamps()
    {
        foreach (var row in Published.Table("lamp_resistances"))
        {
            var lamp = new TungstenLamp(Published.Number(row["rated_watts"]), Published.Number(row["rated_volts"]));
            var hot = Published.Number(row["hot_ohms"]);
            Assert.Equal(hot, lamp.HotOhms, 0.005 * hot);
            var (low, high) = (Published.Number(row["cold_ohms_low"]), Published.Number(row["cold_ohms_high"]));
            Assert.InRange(lamp.ColdOhms, 0.95 * low, 1.05 * high);
        }
    }

    /// <summary>The table rests on a remembered power column: 3 % in amperes, the power follows.</summary>
    [Fact]
    public void Normalised_curve()
    {
        foreach (var row in Published.Table("lamp_normalised_curve"))
        {
            var (volts, amps) = (Published.Number(row["voltage_ratio"]), Published.Number(row["current_ratio"]));
            if (volts >= 0.1)
            {
                Assert.Equal(amps, Sixty.Amps(volts * 230) / (60 / 230.0), 0.03 * amps);
            }
        }
    }

    [Fact]
    public void Resistivity_of_tungsten()
    {
        foreach (var row in Published.Table("tungsten_filament"))
        {
            var published = Published.Number(row["resistivity_microhm_centimetres"]);
            Assert.Equal(published, TungstenLamp.Resistivity(Published.Number(row["temperature_kelvin"])), 0.01 * published);
        }
    }

    /// <summary>Published for light: the 3.4 to 3.5 power of volts near rated; one wavelength gives a little less.</summary>
    [Fact]
    public void Light_falls_much_faster_than_power()
    {
        var exponent = Math.Log(Sixty.Light(0.95 * 230)) / Math.Log(0.95);
        Assert.InRange(exponent, 3.0, 3.6);
        Assert.True(Sixty.Light(0.3 * 230) < 0.02);
    }

    [Fact]
    public void Volts_and_amperes_belong_together() => Assert.Equal(100, Sixty.VoltsAt(Sixty.Amps(100)), 0.01);

    /// <summary>Two lamps side by side are one of their watts together.</summary>
    [Fact]
    public void Lamps_side_by_side()
    {
        var two = new TungstenLamp(100, 230);
        Assert.Equal(new TungstenLamp(60, 230).Amps(90) + new TungstenLamp(40, 230).Amps(90), two.Amps(90), 1e-9);
    }
}
