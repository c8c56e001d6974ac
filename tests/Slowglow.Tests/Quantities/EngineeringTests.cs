using CsCheck;
using Slowglow.Quantities;

namespace Slowglow.Tests.Quantities;

/// <summary>Engineering form, and the drawing's own.</summary>
public class EngineeringTests
{
    private static readonly string[] Units = ["V", "A", "ohm", "F", "H", "W", "Hz"];

    [Theory]
    [InlineData(181.3, "V", "181 V")]
    [InlineData(0.0012, "A", "1.2 mA")]
    [InlineData(4700, "ohm", "4.7 kohm")]
    [InlineData(22e-9, "F", "22 nF")]
    [InlineData(22e-6, "F", "22 µF")]
    [InlineData(999.6, "V", "1 kV")]
    [InlineData(0.9996, "V", "1 V")]
    [InlineData(-0.0123, "V", "-12.3 mV")]
    [InlineData(0, "V", "0 V")]
    [InlineData(1e6, "ohm", "1 Mohm")]
    [InlineData(6, "%", "6 %")]
    [InlineData(0.05, "%", "0.05 %")]
    [InlineData(2.7, "times", "2.7 times")]
    [InlineData(1500, "min", "1500 min")]
    [InlineData(double.PositiveInfinity, "ohm", "infinite ohm")]
    [InlineData(double.NaN, "V", "unknown V")]
    [InlineData(1e-15, "A", "0.001 pA")]
    public void Format(double value, string unit, string expected) => Assert.Equal(expected, Engineering.Format(value, unit));

    [Theory]
    [InlineData(312, 2, "310 ohm")]
    [InlineData(1234, 4, "1.234 kohm")]
    [InlineData(1234, 1, "1 kohm")]
    public void Digits(double value, int digits, string expected) =>
        Assert.Equal(expected, Engineering.Format(value, "ohm", digits));

    [Theory]
    [InlineData(4700, "R", "4k7")]
    [InlineData(0.47, "R", "R47")]
    [InlineData(0.022, "R", "R022")]
    [InlineData(47, "R", "47R")]
    [InlineData(4.7, "R", "4R7")]
    [InlineData(1e6, "R", "1M")]
    [InlineData(2.2e-9, "F", "2n2")]
    [InlineData(22e-6, "F", "22u")]
    public void Drawing(double value, string one, string expected) => Assert.Equal(expected, Engineering.Drawing(value, one));

    [Fact]
    public void WhatIsWrittenReadsBack() =>
        Gen.Select(Gen.Double[-11.9, 5.9], Gen.Int[0, Units.Length - 1], Gen.Int[1, 6])
            .Sample(
                (power, unit, digits) =>
                {
                    var value = Math.Pow(10, power);
                    var text = Engineering.Format(value, Units[unit], digits);
                    Assert.True(QuantityText.TryRead(text, out var read), text);
                    Assert.Equal(value, read.Value, value * 0.5000001 * Math.Pow(10, 1 - digits));
                    Assert.Equal(text, Engineering.Format(read.Value, Units[unit], digits));
                }
            );

    [Fact]
    public void DrawingStyleReadsBack() =>
        Gen.Double[-1.9, 8.9]
            .Sample(power =>
            {
                var value = Math.Pow(10, power);
                var text = Engineering.Drawing(value);
                Assert.True(QuantityText.TryRead(text, Unit.Ohm, out var read), text);
                Assert.Equal(value, read.Value, value * 0.00501);
            });
}
