using System.Diagnostics;
using CsCheck;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Sheets;

/// <summary>Whatever a document holds, it comes back as findings with places inside the document.</summary>
public class NeverThrowsTests
{
    private static readonly string SheetPage = SheetFiles.Text("page.sheet.yaml");
    private static readonly string ReadingsPage = SheetFiles.Text("page.readings.yaml");
    private static readonly Sheet Sheet = SheetReader.Read(SheetPage, SmallLibrary.Library).Value!;
    private static readonly Gen<char> Marks = Gen.Char[" \t\n\r:#-?{}[],&*!|>'\"%@`=.0aV~\u00b5\u0007\ud83d\u2028"];

    private static Gen<string> Mutated(string text) =>
        Gen.Select(Gen.Int[0, text.Length - 1], Gen.Int[0, 30], Gen.String[Marks, 0, 4])
            .Array[1, 5]
            .Select(cuts =>
                cuts.Aggregate(
                    text,
                    (now, cut) =>
                    {
                        var at = Math.Min(cut.Item1, now.Length);
                        return now[..at] + cut.Item3 + now[Math.Min(now.Length, at + cut.Item2)..];
                    }
                )
            );

    [Fact]
    public void MutatedSheets() =>
        Mutated(SheetPage).Sample(text => Check(text, SheetReader.Read(text, SmallLibrary.Library).Findings), iter: 800);

    [Fact]
    public void MutatedReadings() =>
        Mutated(ReadingsPage).Sample(text => Check(text, ReadingsReader.Read(text, Sheet).Findings), iter: 800);

    [Fact]
    public void ReadingLines() =>
        Gen.String[Gen.OneOf(Marks, Gen.Char.AlphaNumeric), 0, 30]
            .Sample(
                text =>
                {
                    Check(text, ReadingsReader.ReadLine(text, Sheet, [Setup.Default]).Findings);
                    Check(text, ReadingsReader.ReadProbe(text, Sheet).Findings);
                },
                iter: 800
            );

    [Fact]
    public void DeepNestingIsRefused()
    {
        foreach (var open in new[] { "[", "{a: ", "- ", "? " })
        {
            var text = "parts: " + string.Concat(Enumerable.Repeat(open, 100_000));
            var found = SheetReader.Read(text, SmallLibrary.Library).Findings;
            Assert.Contains(found, f => f.Severity == Severity.Error);
        }
    }

    [Fact]
    public void AliasesThatMultiplyAreRefused()
    {
        var text =
            "a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n"
            + string.Concat(
                Enumerable.Range(1, 12).Select(i => $"a{i}: &a{i} [{string.Join(", ", Enumerable.Repeat($"*a{i - 1}", 10))}]\n")
            );
        var clock = Stopwatch.StartNew();
        var found = Assert.Single(SheetReader.Read(text, SmallLibrary.Library).Findings);
        Assert.Equal("the document cannot be read from here on: more than 100000 entries, aliases counted in full", found.Text);
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(5));
    }

    [Fact]
    public void HugeDocumentsAreRefused()
    {
        var found = Assert.Single(SheetReader.Read(new string('x', 1_000_001), SmallLibrary.Library).Findings);
        Assert.Equal("the document has 1,000,001 characters; 1,000,000 is the most that is read", found.Text);
    }

    private static void Check(string text, IReadOnlyList<Finding> findings)
    {
        var lines = text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');
        foreach (var finding in findings)
        {
            Assert.True(finding.Place.Line >= 0 && finding.Place.Line <= lines.Length, finding.ToString());
            Assert.True(finding.Place.Line == 0 || finding.Place.Column >= 1, finding.ToString());
            Assert.False(string.IsNullOrWhiteSpace(finding.Text));
            Assert.DoesNotContain("Exception", finding.Text, StringComparison.Ordinal);
            Assert.DoesNotContain("While parsing", finding.Text, StringComparison.Ordinal);
        }

        Assert.Equal(findings.OrderBy(f => f.Place.Line).ThenBy(f => f.Place.Column), findings);
    }
}
