using System.Globalization;
using System.Text.RegularExpressions;
using Slowglow.Bench.Questions;
using Slowglow.Tests.Circuits;

namespace Slowglow.Tests.Power;

/// <summary>The ramp on which old electrolytics are woken.</summary>
public sealed class ReformingTests
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    private static IReadOnlyList<string> Ramp(string demo) =>
        new PlanPowerUp(BenchUnit.From(DemoText.Of(demo)).Value!)
            .Run(60, true, TestContext.Current.CancellationToken)
            .Value!.Reforming;

    [Fact]
    public void Every_high_tension_reservoir_has_its_volts_its_resistor_and_its_limit()
    {
        var lines = Ramp("kittiwake-15");
        Assert.Contains("57.5 V, 115 V, 172 V and 230 V", lines[0], StringComparison.Ordinal);
        Assert.Equal(["C1", "C2", "C3", "C4"], lines.Skip(1).Select(l => l[..2]));

        // 0.03 A for each farad and volt (common practice, no source): 47 uF at the last volts named, in milliamperes.
        var line = Regex.Match(lines[1], @"and ([\d.]+) V, with .* \(([\d.]+) µA at the last\)");
        var (volts, micro) = (double.Parse(line.Groups[1].Value, Plain), double.Parse(line.Groups[2].Value, Plain));
        Assert.InRange(volts, 300, 380);
        Assert.Equal(0.03 * 47e-6 * volts * 1e6, micro, 10.0);
        Assert.Contains("18k 2 W", lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_unit_without_high_tension_has_no_ramp() => Assert.Empty(Ramp("saltmarsh-lm2"));
}
