using Slowglow.Bench.Questions;
using Slowglow.Bench.Writing;
using Slowglow.Sheets;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Bench.Writing;

/// <summary>
/// Every stage as it is offered, on a supply of its own: read without a finding, and at rest where such a stage rests. The windows are common
/// practice, no source.
/// </summary>
public sealed class StageTests
{
    private const string Rails = """
        sheet: 1
        unit: Tern 2
        mains: { volts: 230 V }
        parts:
          T91:
            is: transformer 100 VA
            windings:
              P: { pins: 1-2, volts: 230 V, ohms: 15 }
              HT: { pins: 3-4, volts: 200 V, amps: 200 mA, ohms: 40 }
              LT: { pins: 5-6-7, volts: 15-0-15 V, amps: 1 A, ohms: 1 }
          F91: fuse 1A MAINS.L -> T91.1
          W91: wire MAINS.N -> T91.2
          W92: wire T91.4 -> GND
          W93: wire T91.6 -> GND
          D91: 1N4007 T91.3 -> HT1
          C91: 100u 450V HT1 -> GND
          R91: 1k 5W HT1 -> HT2
          C92: 47u 450V HT2 -> GND
          R90: 220k 1W HT2 -> GND
          D92: 1N4002 T91.5 -> RAWP
          D93: 1N4002 RAWN -> T91.5
          C93: 2200u 35V RAWP -> GND
          C94: 2200u 35V GND -> RAWN
          R92: 220 2W RAWP -> P12
          R93: 220 2W RAWN -> N12
          D94: zener 12V GND -> P12
          D95: zener 12V N12 -> GND

        """;

    public static TheoryData<string> Names() => [.. Stage.All.Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Stage_as_offered_is_read_without_a_finding(string name)
    {
        var read = new ReadTyped().Run(On(name));

        Assert.True(read.Usable);
        Assert.Empty(read.Findings.Where(f => f.Severity != "note").Select(f => $"{f.Line}: {f.Text} {f.Remedy}"));
    }

    [Theory]
    [InlineData("Valve gain stage", "V1.1", 120, 220)]
    [InlineData("Valve gain stage, second half of a valve", "V1.6", 120, 220)]
    [InlineData("Cathode follower", "V1.3", 30, 180)]
    [InlineData("Phase splitter with split load (cathodyne)", "V1.1", 150, 260)]
    [InlineData("Phase splitter, long-tailed pair", "V1.1", 130, 260)]
    [InlineData("Push-pull output, two pentodes with a common cathode resistor", "V1.3", 6, 16)]
    [InlineData("Op-amp, inverting", "U1.6", -0.3, 0.3)]
    [InlineData("Op-amp, non-inverting", "U1.6", -0.3, 0.3)]
    [InlineData("Bridge supply from the mains", "HT1", 230, 320)]
    [InlineData("Full-wave supply with a tapped winding", "HT1", 300, 420)]
    [InlineData("Smoothing, one step", "HT2", 150, 290)]
    [InlineData("Regulator, fixed", "P12", 11.5, 12.5)]
    [InlineData("Regulator, adjustable", "P12", 11, 12.6)]
    [InlineData("Bias supply below chassis", "BIAS", -25, -5)]
    [InlineData("Transistor stage, common emitter", "Q1COL", 4, 10)]
    [InlineData("Transistor output, complementary pair", "OUT", -0.2, 0.2)]
    public void Stage_as_offered_rests_where_such_a_stage_rests(string name, string where, double low, double high)
    {
        var unit = BenchUnit.From(On(name)).Value!;
        var net = unit.Sheet.Nets.Find(where)!;

        var at = new ExpectReadings(unit)
            .Run(Setup.Default, TestContext.Current.CancellationToken)
            .First(e => e.Probe.Red == net && e.Probe.Black == NetTable.Ground);

        Assert.InRange(at.Nominal, low, high);
    }

    /// <summary>With a load or a source where the stage has ends that a whole sheet would take on.</summary>
    private static string On(string name)
    {
        var stage = Stage.All.Single(s => s.Name == name);
        var rails = name switch
        {
            "Bridge supply from the mains" or "Full-wave supply with a tapped winding" =>
                "sheet: 1\nunit: Tern 2\nmains: { volts: 230 V }\nparts:\n",
            "Smoothing, one step" => Rails.Replace("HT2", "HT3", StringComparison.Ordinal),
            "Bias supply below chassis" => Rails,
            _ when name.StartsWith("Regulator", StringComparison.Ordinal) => Rails.Replace(
                " P12",
                " P11",
                StringComparison.Ordinal
            ),
            _ => Rails,
        };
        var lines = stage.AsOffered().Replace("T1.6", "T91.5", StringComparison.Ordinal);
        var valve = name.Contains("second half", StringComparison.Ordinal) ? "  V1: 12AX7\n" : "";
        string[] ends = ["IN", "IN1", "IN2", "OUT", "OUT1", "OUT2", "BIAS", "P12", "HT2"];
        var loads = ends.Where(e => System.Text.RegularExpressions.Regex.IsMatch(lines, $@"\b{e}\b"))
            .Select((e, i) => $"  R8{i}: 470k {e} -> GND\n");
        return rails + valve + lines.TrimEnd() + "\n" + string.Concat(loads);
    }
}
