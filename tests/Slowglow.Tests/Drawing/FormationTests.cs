using Xunit;

namespace Slowglow.Tests.Drawing;

/// <summary>
/// What every service drawing draws in one way, read back from the pins in the SVG. Common practice, no source: a pair stands one above
/// the other with its output in the middle, a long-tailed pair side by side with loads above and the tail below.
/// </summary>
public class FormationTests
{
    [Theory]
    [InlineData("complementary-output", "Q1", "Q2", "OUT")]
    [InlineData("heronsgate-m60", "Q12", "Q13", "OUT")]
    [InlineData("heronsgate-m60", "Q10", "Q11", null)]
    [InlineData("wheatear-p40", "Q6", "Q7", "MID")]
    public void A_pair_stands_one_above_the_other(string sheet, string upper, string lower, string? output)
    {
        var pins = Pins(sheet);
        var (top, bottom) = (Outer(sheet, pins, upper), Outer(sheet, pins, lower));
        Assert.Equal(top.X, bottom.X);
        Assert.True(top.Y < bottom.Y);
        if (output is not null)
        {
            var middle = DrawnSheets
                .Sheet(sheet)
                .Parts.Where(p => p.Designator is "R3" or "R4" or "R23" or "R24" or "R14" or "R15")
                .SelectMany(p => p.Pins.Where(e => e.Net == output).Select(e => pins[$"{p.Designator}.{e.Number}"]))
                .Where(p => p.X == top.X)
                .ToArray();
            Assert.Equal(2, middle.Length);
            Assert.All(middle, p => Assert.InRange(p.Y, top.Y, bottom.Y));
        }
    }

    [Fact]
    public void A_driver_stands_left_of_the_output_device_that_it_drives()
    {
        var pins = Pins("heronsgate-m60");
        foreach (var (driver, stopper, device) in new[] { ("Q10", "R21", "Q12"), ("Q11", "R22", "Q13") })
        {
            var (first, last) = (pins[$"{stopper}.1"], pins[$"{stopper}.2"]);
            Assert.True(Outer("heronsgate-m60", pins, driver).X < first.X);
            Assert.True(first.X < last.X && last.X < Outer("heronsgate-m60", pins, device).X);
            Assert.Equal(first.Y, last.Y);
        }
    }

    [Theory]
    [InlineData("long-tailed-pair", "V1.3", "V1.8", "R5.2", "R6.2", "R4.2")]
    [InlineData("kittiwake-15", "V3.3", "V3.8", "R34.2", "R35.2", "R31.1")]
    [InlineData("ptarmigan-50", "V3.3", "V3.8", "R23.2", "R24.2", "R20.1")]
    public void A_long_tailed_pair_stands_side_by_side(
        string sheet,
        string left,
        string right,
        string load,
        string other,
        string tail
    )
    {
        var pins = Pins(sheet);
        Assert.Equal(pins[left].Y, pins[right].Y);
        Assert.True(pins[left].X < pins[tail].X && pins[tail].X < pins[right].X);
        Assert.True(pins[tail].Y > pins[left].Y);
        Assert.Equal(pins[left].X, pins[load].X);
        Assert.Equal(pins[right].X, pins[other].X);
        Assert.True(pins[load].Y < pins[left].Y && pins[other].Y < pins[left].Y);
    }

    [Fact]
    public void A_figure_of_nothing_is_not_said_in_the_list_at_the_foot() =>
        Assert.All(
            DrawnSheets.Names().Select(n => DrawnSheets.Draw(n.Data).Svg),
            svg => Assert.DoesNotMatch("No room beside the wire:[^<]* (pV|nV|µV)", svg)
        );

    private static Dictionary<string, (double X, double Y)> Pins(string sheet) =>
        new DrawnDocument(DrawnSheets.Draw(sheet).Svg).Pins.ToDictionary(p => p.Pin, p => p.At);

    /// <summary>The collector's pin.</summary>
    private static (double X, double Y) Outer(string sheet, Dictionary<string, (double X, double Y)> pins, string part)
    {
        var one = DrawnSheets.Sheet(sheet).Parts.First(p => p.Designator == part);
        return pins[$"{part}.{one.Pins.First(p => p.Electrode == "c").Number}"];
    }
}
