using System.Text.RegularExpressions;
using Xunit;

namespace Slowglow.Tests.House;

/// <summary>Habits that hold for every file.</summary>
public partial class HouseRulesTests
{
    private const int LongestFile = 400;
    private static readonly string[] Code = [".cs", ".razor", ".razor.css"];
    private static readonly string[] Folders = ["src", "tests", "benchmarks"];

    [Fact]
    public void No_file_is_longer_than_can_be_read_in_one_go()
    {
        var tooLong = Written()
            .Select(f => (File: Repository.Relative(f), Lines: File.ReadLines(f).Count()))
            .Where(f => f.Lines > LongestFile);
        Assert.Empty(tooLong);
    }

    [Fact]
    public void Half_of_the_files_stay_under_a_hundred_lines()
    {
        var lengths = Written().Select(f => File.ReadLines(f).Count()).Order().ToArray();
        Assert.InRange(lengths[lengths.Length / 2], 1, 99);
    }

    [Fact]
    public void Nothing_is_left_unfinished()
    {
        var marks = Written()
            .Where(f => !f.EndsWith("HouseRulesTests.cs", StringComparison.Ordinal))
            .SelectMany(f => File.ReadLines(f).Select((text, i) => (Place: $"{Repository.Relative(f)}:{i + 1}", text)))
            .Where(l => Unfinished().IsMatch(l.text))
            .Select(l => $"{l.Place} {l.text.Trim()}");
        Assert.Empty(marks);
    }

    [Fact]
    public void No_type_is_a_drawer_for_odds_and_ends()
    {
        var drawers = Written().Where(f => Drawer().IsMatch(Path.GetFileNameWithoutExtension(f))).Select(Repository.Relative);
        Assert.Empty(drawers);
    }

    /// <summary>Sheets and readings are the trade's own documents, not a simulator's.</summary>
    [Fact]
    public void Demo_documents_hold_no_simulator_notation()
    {
        var lines = Repository
            .Files("demo", ".yaml")
            .SelectMany(f => File.ReadLines(f).Select((text, i) => (Place: $"{Repository.Relative(f)}:{i + 1}", text)))
            .Where(l => Simulator().IsMatch(l.text))
            .Select(l => $"{l.Place} {l.text.Trim()}");
        Assert.Empty(lines);
    }

    private static IEnumerable<string> Written() =>
        Folders.SelectMany(f => Repository.Files(f, Code)).Where(f => !f.Contains("/Migrations/", StringComparison.Ordinal));

    [GeneratedRegex(@"\b(TODO|FIXME|HACK|XXX|NotImplementedException)\b|throw new NotSupportedException\(\)")]
    private static partial Regex Unfinished();

    [GeneratedRegex(@"(Utils?|Utilities|Helpers?|Manager|Misc|Common)$")]
    private static partial Regex Drawer();

    [GeneratedRegex(@"(^|\s)\.(op|tran|ac|dc|model|include|end)\b|\b[VI]\([A-Za-z0-9]+\)|[0-9]MEG\b")]
    private static partial Regex Simulator();
}
