using Slowglow.Sheets;
using Slowglow.Sheets.Readings;

namespace Slowglow.Tests.Sheets;

/// <summary>Broken sheets and readings, each with its exact message, place and remedy.</summary>
public class BrokenSheetTests
{
    private static readonly Dictionary<string, string> Sheets = BrokenDocuments.Read("broken-sheets.txt");
    private static readonly Dictionary<string, string> SheetFindings = BrokenDocuments.Read("broken-sheets.expected.txt");
    private static readonly Dictionary<string, string> Readings = BrokenDocuments.Read("broken-readings.txt");
    private static readonly Dictionary<string, string> ReadingFindings = BrokenDocuments.Read("broken-readings.expected.txt");
    private static readonly Sheet Page = SheetReader.Read(SheetFiles.Text("page.sheet.yaml"), SmallLibrary.Library).Value!;

    public static TheoryData<string> SheetTitles() => [.. Sheets.Keys];

    public static TheoryData<string> ReadingTitles() => [.. Readings.Keys];

    [Theory]
    [MemberData(nameof(SheetTitles))]
    public void ASheetSaysWhatIsWrong(string title)
    {
        var found = SheetReader.Read(Sheets[title], SmallLibrary.Library).Findings;
        Assert.Equal(SheetFindings[title], BrokenDocuments.Written(found));
        Assert.Contains(found, f => f.Severity >= Severity.Warning);
    }

    [Theory]
    [MemberData(nameof(ReadingTitles))]
    public void AReadingsDocumentSaysWhatIsWrong(string title)
    {
        var found = ReadingsReader.Read(Readings[title], Page).Findings;
        Assert.Equal(ReadingFindings[title], BrokenDocuments.Written(found));
        Assert.Contains(found, f => f.Severity >= Severity.Warning);
    }

    [Fact]
    public void ThereAreMoreThanFifty() => Assert.True(Sheets.Count + Readings.Count >= 50);
}
