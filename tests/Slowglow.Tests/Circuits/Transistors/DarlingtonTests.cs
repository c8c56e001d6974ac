using Slowglow.Circuits;
using Xunit;

namespace Slowglow.Tests.Circuits.Transistors;

/// <summary>Darlingtons. TIP120 to 127 data sheets, from memory: gain at least 1,000 at 0.5 A, about 1.3 V from base to emitter, some 0.7 V left across them when on.</summary>
public sealed class DarlingtonTests
{
    private static SheetOnBench Switch(string type, string @base, string load) =>
        HighTension.Of(20, $"  Q1: {type} c=OUT b=B e=GND\n  R1: {@base} 2W HT -> B\n  R2: {load} 200W HT -> OUT");

    [Fact]
    public void The_gain_is_that_of_two()
    {
        var bench = Switch("TIP122", "47k", "10");
        var (ht, b, c) = (bench.Volts("HT"), bench.Volts("B"), bench.Volts("OUT"));
        Assert.InRange((ht - c) / 10 / ((ht - b) / 47e3), 1000, 5000);
        Assert.InRange(b, 1.1, 1.6);
    }

    [Fact]
    public void Turned_hard_on_it_keeps_more_than_one_junction()
    {
        var bench = Switch("TIP122", "1k", "20");
        Assert.InRange(bench.Volts("OUT"), 0.55, 1.1);
    }

    [Fact]
    public void Its_failures_show()
    {
        var bench = Switch("TIP122", "1k", "20");
        Assert.Equal(bench.Volts("HT"), bench.Volts("OUT", null, new Fault("Q1", "e", FailureMode.Open)), 0.5);
        Assert.InRange(bench.Volts("OUT", null, new Fault("Q1", "c-e", FailureMode.Short)), 0, 0.15);
        Assert.InRange(bench.Volts("B", null, new Fault("Q1", "b-e", FailureMode.Short)), 0, 0.01);
        Assert.InRange(bench.Volts("B", null, new Fault("Q1", "c", FailureMode.Open)), 1.0, 2.2);
    }

    [Fact]
    public void The_pnp_one_is_its_mirror()
    {
        var bench = HighTension.Of(20, "  Q1: TIP127 c=OUT b=B e=HT\n  R1: 1k 2W B -> GND\n  R2: 20 200W OUT -> GND");
        Assert.InRange(bench.Volts("HT") - bench.Volts("OUT"), 0.55, 1.1);
    }
}
