using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Diode;

namespace Slowglow.Tests.Circuits;

/// <summary>Harmonics and what clips first.</summary>
public sealed class HarmonicTests
{
    private const string Clipper = "  R1: 10k IN -> OUT\n  D1: 1N4148 OUT -> GND\n  D2: 1N4148 GND -> OUT";

    /// <summary>
    /// The closed law of two diodes back to back behind a resistor, (Vs - V) / R = 2 Is sinh(V / n Vt), solved point by point and summed by
    /// Fourier.
    /// </summary>
    [Theory]
    [InlineData(0.5)]
    [InlineData(2)]
    [InlineData(10)]
    public void Diode_clipper_has_the_harmonics_of_its_law(double volts)
    {
        var bench = Beds.Passive(Clipper, "{ in: IN, out: OUT, source: 1, level: 1 V }");
        var law = bench.Sheet.Parts.OfType<DiodePart>().First().Device.Law;
        var expected = Fourier(volts, law["is"], law["n"] * 0.025852);
        var content = bench.World().Harmonics([volts], cancel: TestContext.Current.CancellationToken)[0];
        Assert.NotNull(content);
        Assert.Equal(expected[1], content.OutputVolts, 0.01 * expected[1]);
        for (var h = 2; h <= 10; h++)
        {
            Assert.Equal(expected[h] / expected[1], content.Harmonics[h - 2], 0.005);
        }

        Assert.True(content.Harmonics[1] > 10 * content.Harmonics[0]);
    }

    private static double[] Fourier(double volts, double saturation, double knee)
    {
        const int Points = 4096;
        var sums = new System.Numerics.Complex[11];
        for (var k = 0; k < Points; k++)
        {
            var source = Math.Sqrt(2) * volts * Math.Sin(2 * Math.PI * k / Points);
            double low = -2,
                high = 2;
            for (var n = 0; n < 60; n++)
            {
                var v = (low + high) / 2;
                (low, high) = (source - v) / 10001 > 2 * saturation * Math.Sinh(v / knee) ? (v, high) : (low, v);
            }

            for (var h = 1; h <= 10; h++)
            {
                sums[h] +=
                    low * System.Numerics.Complex.FromPolarCoordinates(Math.Sqrt(2) / Points, -2 * Math.PI * h * k / Points);
            }
        }

        return [.. sums.Select(s => s.Magnitude)];
    }

    private static ClippingCause First(SheetOnBench bench)
    {
        var causes = bench.World().ClipsFirst(cancel: TestContext.Current.CancellationToken);
        Assert.NotEmpty(causes);
        return causes[0];
    }

    [Fact]
    public void Diodes_in_the_feedback_conduct_first()
    {
        var bench = Beds.Build(
            Beds.Rails15,
            """
              U3: TL072 3=GND 2=X 1=OUT 8=P15 4=N15
              R1: 10k IN -> X
              R2: 100k X -> OUT
              D11: 1N4148 X -> OUT
              D12: 1N4148 OUT -> X
            """,
            "{ in: IN, out: OUT, source: 1, level: 10 mV }"
        );
        var cause = First(bench);
        Assert.Equal(ClippingKind.Conducts, cause.Kind);
        Assert.Contains(cause.Part, new[] { "D11", "D12" });
        Assert.InRange(cause.OutputVolts, 0.15, 0.5);
    }

    /// <summary>Common practice: a TL072 comes within a volt or two of its rails, so 9 to 10 V rms on +-15 V.</summary>
    [Fact]
    public void An_op_amp_reaches_its_rail()
    {
        var bench = Beds.Build(
            Beds.Rails15,
            "  U3: TL072 3=IN 2=X 1=OUT 8=P15 4=N15\n  R1: 10k X -> GND\n  R2: 100k X -> OUT\n  R3: 100k IN -> GND",
            "{ in: IN, out: OUT, source: 1k, level: 10 mV }"
        );
        var cause = First(bench);
        Assert.Equal("U3", cause.Part);
        Assert.True(cause.Kind is ClippingKind.PositiveLimit or ClippingKind.NegativeLimit);
        Assert.InRange(cause.OutputVolts, 8.5, 10.6);
        Assert.Contains("30 V from rail to rail", cause.Words, StringComparison.Ordinal);
    }

    /// <summary>Common practice: a stage biased hot and fed through a high resistance runs into grid current.</summary>
    [Fact]
    public void A_triode_biased_hot_runs_into_grid_current()
    {
        var bench = Beds.Build(
            Beds.HighTension,
            """
              V1: 12AX7 1=A 2=IN 3=K
              R2: 1M IN -> GND
              R3: 470 K -> GND
              C3: 1000u 25V K -> GND
              R4: 100k HT -> A
              C4: 100n 400V film A -> OUT
              R5: 1M OUT -> GND
            """,
            "{ in: IN, out: OUT, source: 100k, level: 10 mV }"
        );
        var cause = First(bench);
        Assert.Equal("V1", cause.Part);
        Assert.Equal(ClippingKind.GridCurrent, cause.Kind);
    }

    /// <summary>A follower gives no more than its standing current times the load: 1.4 mA into 1 k beside 10 k is 1.3 V crest.</summary>
    [Fact]
    public void A_follower_with_too_much_load_cuts_off()
    {
        var bench = Beds.Build(
            Beds.Rails15,
            """
              Q1: 2N3904 c=P15 b=IN e=E
              R1: 100k IN -> GND
              R2: 10k E -> N15
              C11: 100u E -> OUT
              R3: 1k OUT -> GND
            """,
            "{ in: IN, out: OUT, source: 1k, level: 10 mV }"
        );
        var cause = First(bench);
        Assert.Equal("Q1", cause.Part);
        Assert.Equal(ClippingKind.CutOff, cause.Kind);
        Assert.InRange(cause.OutputVolts, 0.8, 1.0);
    }

    /// <summary>Common practice: one half of a class AB pair going off is no clipping; the stage ends in grid current or at the knee.</summary>
    [Fact]
    public void A_push_pull_stage_does_not_clip_where_one_half_goes_off()
    {
        var sheet = SheetReader.Read(DemoText.Of("kittiwake-15")).Value!;
        var worlds = new Worlds(Circuit.From(sheet).Value!);
        var world = worlds.World(Slowglow.Sheets.Setups.Setup.Default, [], TestContext.Current.CancellationToken);
        var causes = world.ClipsFirst("second", TestContext.Current.CancellationToken);
        Assert.NotEmpty(causes);
        Assert.DoesNotContain(causes, c => c.Part is "V4" or "V5" && c.Kind == ClippingKind.CutOff);
    }
}
