using Slowglow.Bench.Jobs;
using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Xunit;

namespace Slowglow.Tests.Bench.Jobs;

public sealed class SlippedPointTests
{
    private static readonly Probe Anode = new("V1.6", "V1.6", "GND", ProbeKind.Dc);

    [Theory]
    [InlineData(15.4, "V1.6 = 154 V on bench")]
    [InlineData(1540, "V1.6 = 154 V on bench")]
    [InlineData(0.154, "V1.6 = 154 V on bench")]
    [InlineData(1.6, "V1.6 = 160 V on bench")]
    [InlineData(154, null)]
    [InlineData(140, null)]
    [InlineData(33.1, null)]
    [InlineData(0, null)]
    [InlineData(-15.4, null)]
    public void Only_a_figure_whose_digits_belong_there_is_asked_about(double volts, string? meant) =>
        Assert.Equal(meant, SlippedPoint.Meant(Reading(Anode, volts), Belongs(Anode, 154, 140, 168)));

    [Fact]
    public void Ripple_keeps_its_word_and_nothing_is_asked_without_a_figure_to_compare_with()
    {
        var ripple = Anode with { Kind = ProbeKind.Ac, SaidAsRipple = true };
        Assert.Equal("V1.6 = 2.1 V ripple on bench", SlippedPoint.Meant(Reading(ripple, 21), Belongs(ripple, 2, 1.8, 2.2)));
        Assert.Null(SlippedPoint.Meant(Reading(Anode, 15.4), null));
        Assert.Null(SlippedPoint.Meant(Reading(Anode, 15.4), Belongs(Anode, double.NaN, double.NaN, double.NaN)));
        Assert.Null(SlippedPoint.Meant(Reading(Anode, 15.4) with { Said = MeterSaid.Overload }, Belongs(Anode, 154, 140, 168)));
    }

    private static Reading Reading(Probe probe, double value) =>
        new(probe, Setup.Default with { Name = "bench" }, MeterSaid.Value, value, MeterClass.Handheld, "", Place.None);

    private static Expectation Belongs(Probe probe, double nominal, double low, double high) =>
        new(probe, AnswerKind.Value, nominal, low, high, "V");
}
