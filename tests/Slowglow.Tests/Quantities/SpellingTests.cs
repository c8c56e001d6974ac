using Slowglow.Quantities;

namespace Slowglow.Tests.Quantities;

/// <summary>Every spelling of a value that the format page promises, and those that drawings use besides.</summary>
public class SpellingTests
{
    [Theory]
    [InlineData("4k7", 4700)]
    [InlineData("4K7", 4700)]
    [InlineData("4.7k", 4700)]
    [InlineData("4,7k", 4700)]
    [InlineData("4700", 4700)]
    [InlineData("4.7 kohm", 4700)]
    [InlineData("4.7 kOhms", 4700)]
    [InlineData("4.7kΩ", 4700)]
    [InlineData("4.7 k\u2126", 4700)]
    [InlineData("R47", 0.47)]
    [InlineData("0R47", 0.47)]
    [InlineData("47R", 47)]
    [InlineData("4R7", 4.7)]
    [InlineData("180ohm", 180)]
    [InlineData("8 ohm", 8)]
    [InlineData("1M", 1e6)]
    [InlineData("2M2", 2.2e6)]
    [InlineData("1Mohm", 1e6)]
    [InlineData("1G", 1e9)]
    [InlineData("4.7e3", 4700)]
    public void Resistors(string text, double ohms) => AssertReads(text, Unit.Ohm, ohms);

    [Theory]
    [InlineData("2n2", 2.2e-9)]
    [InlineData("2200p", 2.2e-9)]
    [InlineData(".0022u", 2.2e-9)]
    [InlineData("0.0022 uF", 2.2e-9)]
    [InlineData("22u", 22e-6)]
    [InlineData("22uF", 22e-6)]
    [InlineData("22 µF", 22e-6)]
    [InlineData("22\u03bcF", 22e-6)]
    [InlineData("22mfd", 22e-6)]
    [InlineData("22 MFD", 22e-6)]
    [InlineData("100pF", 100e-12)]
    [InlineData("100 mmf", 100e-12)]
    [InlineData("100 uuF", 100e-12)]
    [InlineData("4u7", 4.7e-6)]
    [InlineData("4µ7", 4.7e-6)]
    [InlineData("100P", 100e-12)]
    [InlineData("0,1uF", 0.1e-6)]
    public void Capacitors(string text, double farads) => AssertReads(text, Unit.Farad, farads);

    [Theory]
    [InlineData("230 V", Unit.Volt, 230)]
    [InlineData("-12.3 mV", Unit.Volt, -0.0123)]
    [InlineData("\u221212 V", Unit.Volt, -12)]
    [InlineData("230 VAC", Unit.Volt, 230)]
    [InlineData("5V1", Unit.Volt, 5.1)]
    [InlineData("2kV", Unit.Volt, 2000)]
    [InlineData("25 mA", Unit.Ampere, 0.025)]
    [InlineData("25 MA", Unit.Ampere, 0.025)]
    [InlineData("500mA", Unit.Ampere, 0.5)]
    [InlineData("1A5", Unit.Ampere, 1.5)]
    [InlineData("6 %", Unit.Percent, 0.06)]
    [InlineData("±5%", Unit.Percent, 0.05)]
    [InlineData("+/-10%", Unit.Percent, 0.1)]
    [InlineData("20 VA", Unit.VoltAmpere, 20)]
    [InlineData("8H", Unit.Henry, 8)]
    [InlineData("100mH", Unit.Henry, 0.1)]
    [InlineData("1kHz", Unit.Hertz, 1000)]
    [InlineData("50 Hz", Unit.Hertz, 50)]
    [InlineData("40 W", Unit.Watt, 40)]
    [InlineData("1/2 W", Unit.Watt, 0.5)]
    [InlineData("½W", Unit.Watt, 0.5)]
    [InlineData("1/4W", Unit.Watt, 0.25)]
    [InlineData("1 min", Unit.Minute, 1)]
    [InlineData("90 min", Unit.Minute, 90)]
    [InlineData("30 s", Unit.Minute, 0.5)]
    [InlineData("2 hours", Unit.Minute, 120)]
    public void Ratings(string text, Unit unit, double value)
    {
        AssertReads(text, unit, value);
        Assert.True(QuantityText.TryRead(text, out var bare));
        Assert.Equal(unit, bare.Unit);
    }

    [Theory]
    [InlineData("")]
    [InlineData("10q")]
    [InlineData("k")]
    [InlineData("4k7k")]
    [InlineData("4..7k")]
    [InlineData("1MEG")]
    [InlineData("12AX7")]
    [InlineData("1N4007")]
    [InlineData("HT1")]
    [InlineData("5k:8")]
    [InlineData("--5")]
    [InlineData("1/0 W")]
    [InlineData("1e999")]
    [InlineData("12-0-12 V")]
    [InlineData("0x10")]
    [InlineData("NaN")]
    public void NotAFigure(string text) => Assert.False(QuantityText.TryRead(text, out _));

    [Fact]
    public void OtherUnitsDoNotFit()
    {
        Assert.False(QuantityText.TryRead("230 V", Unit.Ohm, out _));
        Assert.False(QuantityText.TryRead("22uF", Unit.Henry, out _));
        Assert.True(QuantityText.TryRead("22u", Unit.Henry, out var henries));
        Assert.Equal(22e-6, henries.Value, 1e-18);
    }

    [Theory]
    [InlineData("8mf", 8e-6, SpellingDoubt.OldMicrofarad)]
    [InlineData("8 MF", 8e-6, SpellingDoubt.OldMicrofarad)]
    [InlineData("4.7 mF", 4.7e-3, SpellingDoubt.Millifarad)]
    [InlineData("8 mfd", 8e-6, SpellingDoubt.None)]
    [InlineData("4,700", 4700, SpellingDoubt.ThousandsComma)]
    [InlineData("0,022u", 0.022e-6, SpellingDoubt.None)]
    public void Doubtful(string text, double value, SpellingDoubt doubt)
    {
        Assert.True(QuantityText.TryRead(text, out var figure));
        Assert.Equal(value, figure.Value, Math.Abs(value) * 1e-12);
        Assert.Equal(doubt, figure.Doubt);
    }

    private static void AssertReads(string text, Unit unit, double value)
    {
        Assert.True(QuantityText.TryRead(text, unit, out var figure), text);
        Assert.Equal(value, figure.Value, Math.Abs(value) * 1e-12);
    }
}
