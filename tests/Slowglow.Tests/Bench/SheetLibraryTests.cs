using Slowglow.Bench.Questions;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.House;

namespace Slowglow.Tests.Bench;

/// <summary>The sheets that come without a job: they check clean, and read as head arithmetic says they must.</summary>
public class SheetLibraryTests
{
    public static TheoryData<string> Files() =>
        [.. Repository.Files("demo/sheets", ".yaml").Select(f => Path.GetFileNameWithoutExtension(f))];

    internal static BenchUnit Open(string name)
    {
        var opened = BenchUnit.From(File.ReadAllText(Path.Combine(Repository.Root, "demo", "sheets", $"{name}.yaml")));
        Assert.NotNull(opened.Value);
        return opened.Value;
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void They_check_clean(string name)
    {
        var check = new CheckSheet().Run(File.ReadAllText(Path.Combine(Repository.Root, "demo", "sheets", $"{name}.yaml")));
        Assert.True(check.Usable);
        Assert.Empty(check.Findings.Where(f => f.Severity != Severity.Note).Select(f => f.Text));
    }

    // Common practice, no source: crest of the winding less two diodes, a few per cent up for light load; half the rail at the output of a
    // capacitor-coupled amplifier; a tenth of a volt under a zener less a junction; a 12AX7 with 100 k and 1k5 stands at about two thirds of its rail.
    [Theory]
    [InlineData("linnet-12", "HT1", 310, 345)]
    [InlineData("linnet-12", "V3.8", 16, 24)]
    [InlineData("ptarmigan-50", "HT1", 405, 450)]
    [InlineData("ptarmigan-50", "BIAS", -42, -32)]
    [InlineData("wheatear-p40", "MID", 27, 33)]
    [InlineData("wheatear-p40", "RAW", 55, 64)]
    [InlineData("merganser-vx2", "V1.6", 120, 165)]
    [InlineData("merganser-vx2", "RAWP", 18, 24)]
    [InlineData("dunlin-pm1", "P15", 14.5, 15.5)]
    [InlineData("curlew-r2", "P24", 22.5, 24.2)]
    [InlineData("bittern-ps2", "P18", 17, 19.5)]
    [InlineData("bittern-ps2", "N18", -19.5, -17)]
    [InlineData("siskin-5r", "V4.3", 6, 10)]
    public void They_read_as_they_should(string name, string where, double low, double high)
    {
        var unit = Open(name);
        var net = unit.Sheet.Nets.Find(where)!;
        var probe = new Probe(where, net, NetTable.Ground, ProbeKind.Dc);
        Assert.InRange(
            new ExpectReadings(unit).Run(Setup.Default, [probe], TestContext.Current.CancellationToken)[0].Nominal,
            low,
            high
        );
    }
}
