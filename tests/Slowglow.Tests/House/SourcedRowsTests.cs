using Xunit;

namespace Slowglow.Tests.House;

/// <summary>Figures that code and tests lean on come from somewhere.</summary>
public class SourcedRowsTests
{
    public static TheoryData<string> Tables() => [.. Repository.Files("tests/reference", ".csv").Select(Repository.Relative)];

    [Fact]
    public void There_are_reference_tables() => Assert.NotEmpty(Tables());

    [Theory]
    [MemberData(nameof(Tables))]
    public void Every_reference_row_names_its_source(string table)
    {
        var rows = CsvFile.Read(Path.Combine(Repository.Root, table));
        Assert.NotEmpty(rows);
        Assert.All(
            rows,
            row => Assert.False(string.IsNullOrWhiteSpace(row.GetValueOrDefault("source")), string.Join(" | ", row.Values))
        );
    }
}
