using Slowglow.Sheets;
using Xunit;

namespace Slowglow.Tests.Sheets;

public sealed class YearTests
{
    private const string Parts = "\nparts:\n  R1: 1k A -> GND\n  R2: 1k A -> GND\n";

    [Fact]
    public void A_year_gives_the_age()
    {
        var sheet = SheetReader.Read("sheet: 1\nunit: Test bed\nyear: 1964" + Parts).Value!;
        Assert.Equal(1964, sheet.Year);
        Assert.Equal(61, sheet.AgeIn(2025));
        Assert.Equal(0, sheet.AgeIn(1950));
    }

    [Fact]
    public void Without_a_year_nobody_knows_the_age() =>
        Assert.True(double.IsNaN(SheetReader.Read("sheet: 1\nunit: Test bed" + Parts).Value!.AgeIn(2025)));

    [Theory]
    [InlineData("about 1964")]
    [InlineData("64")]
    [InlineData("-1964")]
    public void What_is_no_year_is_told_with_its_place(string year)
    {
        var read = SheetReader.Read($"sheet: 1\nunit: Test bed\nyear: {year}" + Parts);
        var finding = Assert.Single(read.Findings, f => f.Severity == Severity.Error);
        Assert.Equal((3, $"'{year}' is not a year"), (finding.Place.Line, finding.Text));
    }
}
