using Slowglow.Sheets.Devices;
using Xunit;

namespace Slowglow.Tests.Circuits.Transistors;

/// <summary>Field-effect transistors by type, in a circuit. Ranges of the data sheets, from memory.</summary>
public sealed class FieldEffectTests
{
    /// <summary>Gate tied to source, 15 V across it: the drain current is Idss.</summary>
    [Theory]
    [InlineData("J201", 0.2, 1)]
    [InlineData("J202", 0.9, 4.5)]
    [InlineData("2N5457", 1, 5)]
    [InlineData("2N5458", 2, 9)]
    [InlineData("2N5459", 4, 16)]
    [InlineData("2N3819", 2, 20)]
    [InlineData("MPF102", 2, 20)]
    [InlineData("BF245A", 2, 6.5)]
    [InlineData("BF245B", 6, 15)]
    [InlineData("BF245C", 12, 25)]
    [InlineData("2SK170", 2.6, 20)]
    public void A_JFET_with_its_gate_on_its_source_draws_Idss(string type, double low, double high)
    {
        var bench = HighTension.Of(15, $"  Q1: {type} d=HT g=S s=S\n  R1: 1 5W S -> GND");
        Assert.InRange(bench.Volts("S") * 1e3, low, high);
    }

    /// <summary>A milliampere through drain and gate tied together: the volts are the threshold, give or take what a milliampere needs.</summary>
    [Theory]
    [InlineData("2N7000", 0.8, 3)]
    [InlineData("BS170", 0.8, 3)]
    [InlineData("IRF540", 2, 4)]
    [InlineData("IRF510", 2, 4)]
    [InlineData("IRF840", 2, 4)]
    [InlineData("2SK1058", 0.15, 1.45)]
    public void A_MOSFET_tied_to_its_gate_stands_at_its_threshold(string type, double low, double high)
    {
        var bench = HighTension.Of(20, $"  Q1: {type} d=D g=D s=GND\n  R1: 18k HT -> D");
        Assert.InRange(bench.Volts("D"), low, high);
    }

    /// <summary>Every JFET pinches off at its vto, whatever its polarity.</summary>
    [Fact]
    public void A_JFET_is_off_beyond_its_pinch_off()
    {
        foreach (var device in DeviceLibrary.Shipped.All.Where(d => d.Kind == DeviceKind.Jfet && d["polarity"] > 0))
        {
            var bias = -1.2 * device["vto"];
            var lower = FormattableString.Invariant($"{10e3 * bias / (30 - bias):F1}");
            var bench = HighTension.Of(
                30,
                $"  Q1: {device.Type} d=D g=GND s=S\n  R1: 1k HT -> D\n  R2: 10k HT -> S\n  R3: {lower} S -> GND"
            );
            Assert.InRange(bench.Volts("HT") - bench.Volts("D"), 0, 0.02);
        }
    }
}
