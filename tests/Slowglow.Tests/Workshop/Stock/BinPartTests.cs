using Slowglow.Quantities;
using Slowglow.Workshop.Stock;
using Xunit;

namespace Slowglow.Tests.Workshop.Stock;

public sealed class BinPartTests
{
    [Theory]
    [InlineData("22 nF 630 V film", Unit.Farad, 22e-9, 630, double.NaN)]
    [InlineData("100 kohm 1 W metal film", Unit.Ohm, 100e3, double.NaN, 1)]
    [InlineData("47 uF 450V axial", Unit.Farad, 47e-6, 450, double.NaN)]
    [InlineData("4.7 kohm, spare", Unit.Ohm, 4700, double.NaN, double.NaN)]
    public void Words_on_a_bin_say_value_and_rating(string words, Unit unit, double value, double volts, double watts)
    {
        var read = BinPart.Read(words);

        Assert.Equal((unit, volts, watts), (read!.Value.Unit, read.Volts, read.Watts));
        Assert.Equal(value, read.Value.Value, 1e-6 * value);
    }

    [Theory]
    [InlineData("1N4007")]
    [InlineData("EL84")]
    [InlineData("fuse T1A 20 mm")]
    [InlineData("")]
    public void What_is_no_resistor_or_capacitor_is_left_alone(string words) => Assert.Null(BinPart.Read(words));
}
