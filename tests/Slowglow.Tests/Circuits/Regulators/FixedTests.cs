using Xunit;

namespace Slowglow.Tests.Circuits.Regulators;

/// <summary>Fixed regulators: their volts, what they need above them, and their limit. Data sheets, from memory.</summary>
public sealed class FixedTests
{
    private static SheetOnBench Loaded(string type, double supply, string load) =>
        HighTension.Of(supply, $"  U1: {type} in=HT gnd=GND out=OUT\n  R1: {load} 100W OUT -> GND\n  C2: 10u 50V OUT -> GND");

    [Theory]
    [InlineData("7805", 5)]
    [InlineData("7812", 12)]
    [InlineData("7815", 15)]
    [InlineData("7824", 24)]
    [InlineData("78L05", 5)]
    [InlineData("78L12", 12)]
    public void Holds_the_volts_in_its_number(string type, double volts) =>
        Assert.Equal(volts, Loaded(type, volts + 8, "1k").Volts("OUT"), 0.05 * volts);

    /// <summary>About two volts must stay across it.</summary>
    [Fact]
    public void Passes_what_is_left_below_its_dropout()
    {
        var bench = Loaded("7812", 12.5, "1k");
        Assert.InRange(bench.Volts("HT") - bench.Volts("OUT"), 1, 2.5);
    }

    /// <summary>A 78xx gives 1 to 2.4 A into a short, a 78Lxx 0.1 to 0.2 A.</summary>
    [Theory]
    [InlineData("7812", "1", 0.9, 2.5)]
    [InlineData("78L12", "10", 0.08, 0.25)]
    public void Limits_its_current(string type, string load, double low, double high)
    {
        var ohms = double.Parse(load, System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(Loaded(type, 20, load).Volts("OUT") / ohms, low, high);
    }
}
