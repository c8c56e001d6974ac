using Slowglow.Circuits;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Circuits;

/// <summary>Response by frequency against network theory found in any textbook.</summary>
public sealed class ResponseTests
{
    private static FrequencyResponse Of(SheetOnBench bench, double from, double to, double reference)
    {
        var response = bench.World().Response(from, to, 10, referenceHertz: reference);
        Assert.NotNull(response);
        return response;
    }

    [Theory]
    [InlineData("10k", "10n", 1591.55)]
    [InlineData("100k", "4n7", 338.63)]
    [InlineData("1k", "1u", 159.155)]
    public void Low_pass_is_3_dB_down_at_1_over_2_pi_RC(string ohms, string farads, double hertz)
    {
        var bench = Beds.Passive(
            $"  R1: {ohms} IN -> OUT\n  C1: {farads} OUT -> GND",
            "{ in: IN, out: OUT, source: 1, level: 1 V }"
        );
        var response = Of(bench, 1, 100e3, 1);
        Assert.Equal(hertz, response.High.Hertz, 0.005 * hertz);
        Assert.True(double.IsNaN(response.Low.Hertz));
        var corner = bench.World().Response(hertz, 2 * hertz, 1, referenceHertz: 1)!.Points[0];
        Assert.Equal(-3.01, corner.Decibels, 0.05);
        Assert.Equal(-45, corner.PhaseDegrees, 0.5);
    }

    [Fact]
    public void High_pass_falls_by_6_dB_an_octave_below_its_corner()
    {
        var bench = Beds.Passive("  C1: 22n IN -> OUT\n  R1: 1M OUT -> GND", "{ in: IN, out: OUT, source: 1, level: 1 V }");
        var response = Of(bench, 0.1, 10e3, 1000);
        var corner = 1 / (2 * Math.PI * 22e-9 * 1e6);
        Assert.Equal(corner, response.Low.Hertz, 0.005 * corner);
        Assert.True(double.IsNaN(response.High.Hertz));
        var far = bench.World().Response(0.1, 0.2, 1)!.Points;
        Assert.Equal(6.02, far[1].Decibels - far[0].Decibels, 0.05);
    }

    /// <summary>A corner goes with 1 / RC: R of 10 % (sigma 5 %) and C of 20 % (sigma 10 %) give 11.2 %.</summary>
    [Fact]
    public void Corner_spreads_as_its_resistor_and_capacitor_do()
    {
        var bench = Beds.Passive(
            "  R1: 10k 10% IN -> OUT\n  C1: 10n 20% OUT -> GND",
            "{ in: IN, out: OUT, source: 1, level: 1 V }"
        );
        var high = Of(bench, 1, 100e3, 1).High;
        Assert.Equal(Math.Sqrt((0.05 * 0.05) + (0.1 * 0.1)), high.Sigma / high.Hertz, 0.004);
    }

    [Fact]
    public void Spread_of_a_point_is_what_changed_parts_show()
    {
        const string Signal = "{ in: IN, out: OUT, source: 1, level: 1 V }";
        static double At(string ohms) =>
            Beds.Passive($"  R1: {ohms} 10% IN -> OUT\n  C1: 10n OUT -> GND", Signal)
                .World()
                .Response(3000, 6000, 1, referenceHertz: 10)!
                .Points[0]
                .Decibels;

        var bench = Beds.Passive("  R1: 10k 10% IN -> OUT\n  C1: 10n 0.01% OUT -> GND", Signal);
        var sigma = bench.World().Response(3000, 6000, 1, referenceHertz: 10)!.Points[0].SigmaDecibels;
        Assert.Equal((At("9k95") - At("10k05")) / 0.01 * 0.05, sigma, 0.02 * sigma);
    }

    [Fact]
    public void Nothing_is_said_with_the_power_off_or_without_a_path()
    {
        var bench = Beds.Passive("  R1: 10k IN -> OUT\n  C1: 10n OUT -> GND", "{ in: IN, out: OUT, source: 1, level: 1 V }");
        Assert.Null(bench.WorldIn(Setup.Cold).Response(10, 1000, 3));
        Assert.Null(bench.World().Response(10, 1000, 3, "no such channel"));
    }
}
