using Slowglow.Circuits;
using Xunit;

namespace Slowglow.Tests.Circuits.Optocouplers;

/// <summary>LED and light-dependent resistor. Ohms at 1 and 10 mA: data sheets, from memory.</summary>
public sealed class OptocouplerTests
{
    private static SheetOnBench With(string type, double milliamps, string top = "10k")
    {
        var ohms = (20 - 1.7) / milliamps * 1e3;
        return HighTension.Of(
            20,
            FormattableString.Invariant(
                $"  OC1: {type} a=LED k=GND ra=CELL rb=GND\n  R1: {ohms:F0} 5W HT -> LED\n  R2: {top} 1W HT -> CELL\n  R3: 10M CELL -> GND"
            )
        );
    }

    private static double CellOhms(SheetOnBench bench, double top)
    {
        var (ht, cell) = (bench.Volts("HT"), bench.Volts("CELL"));
        return cell / ((ht - cell) / top);
    }

    [Theory]
    [InlineData("VTL5C3", 1, 30e3)]
    [InlineData("VTL5C3", 10, 5e3)]
    [InlineData("VTL5C2", 1, 5.5e3)]
    [InlineData("VTL5C2", 10, 800)]
    [InlineData("VTL5C4", 1, 1200)]
    [InlineData("VTL5C4", 10, 125)]
    [InlineData("NSL-32", 20, 500)]
    public void The_cell_has_its_ohms_at_the_current(string type, double milliamps, double ohms) =>
        Assert.Equal(ohms, CellOhms(With(type, milliamps), 10e3), 0.12 * ohms);

    [Fact]
    public void In_the_dark_the_cell_is_megohms()
    {
        var bench = With("VTL5C3", 10, "1M");
        var dark = new Fault("OC1", "a-k", FailureMode.Open);
        Assert.True(bench.Volts("CELL", null, dark) > 0.7 * bench.Volts("HT"));
        Assert.True(bench.Volts("CELL") < 0.02 * bench.Volts("HT"));
    }

    [Fact]
    public void A_dimmed_LED_raises_the_ohms_and_an_open_cell_is_open()
    {
        var bench = With("VTL5C4", 10);
        var healthy = bench.Volts("CELL");
        Assert.True(bench.Volts("CELL", null, new Fault("OC1", "", FailureMode.Drifted, 4)) > 3 * healthy);
        Assert.Equal(bench.Volts("HT"), bench.Volts("CELL", null, new Fault("OC1", "ra-rb", FailureMode.Open)), 0.05);
        Assert.InRange(bench.Volts("CELL", null, new Fault("OC1", "ra-rb", FailureMode.Short)), 0, 0.001);
        Assert.All(
            bench.Circuit.Faults.Where(f => f.Part == "OC1"),
            f => Assert.True(Math.Abs(bench.Volts("CELL", null, f) - healthy) > 1e-3)
        );
    }
}
