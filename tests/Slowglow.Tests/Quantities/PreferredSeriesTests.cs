using System.Globalization;
using Slowglow.Quantities;
using Slowglow.Tests.House;

namespace Slowglow.Tests.Quantities;

/// <summary>Preferred numbers against IEC 60063 as listed in published copies (tests/reference/preferred_numbers_e_series.csv).</summary>
public class PreferredSeriesTests
{
    private static readonly ILookup<int, double> Published = CsvFile
        .Read(Path.Combine(Repository.Root, "tests/reference/preferred_numbers_e_series.csv"))
        .ToLookup(
            r => int.Parse(r["series"][1..], CultureInfo.InvariantCulture),
            r => double.Parse(r["value"], CultureInfo.InvariantCulture)
        );

    [Theory]
    [InlineData(3)]
    [InlineData(6)]
    [InlineData(12)]
    [InlineData(24)]
    [InlineData(48)]
    [InlineData(96)]
    [InlineData(192)]
    public void EveryPublishedValueIsInItsSeries(int series)
    {
        Assert.Equal(series, Published[series].Count());
        Assert.All(Published[series], v => Assert.True(PreferredSeries.SeriesOf(v * 1000) <= series, $"{v}"));
    }

    [Fact]
    public void NothingElseIs()
    {
        var held = Published.SelectMany(g => g).Select(v => (int)Math.Round(v * 100)).ToHashSet();
        for (var digits = 100; digits < 1000; digits++)
        {
            Assert.Equal(held.Contains(digits), PreferredSeries.SeriesOf(digits * 1e-8) is not null);
        }
    }

    [Theory]
    [InlineData(25e-6, 24e-6)]
    [InlineData(5000, 5100)]
    [InlineData(98, 100)]
    [InlineData(8e-6, 8.2e-6)]
    public void NearestInE24(double value, double nearest) =>
        Assert.Equal(nearest, PreferredSeries.NearestE24(value), nearest * 1e-9);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(4701)]
    public void NoSeries(double value) => Assert.Null(PreferredSeries.SeriesOf(value));
}
