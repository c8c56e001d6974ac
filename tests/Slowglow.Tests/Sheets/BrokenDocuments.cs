using Slowglow.Sheets;

namespace Slowglow.Tests.Sheets;

/// <summary>
/// Cases of a data file: a title, a document, and its findings as a person once read and approved them. Documents are in
/// <c>broken-*.txt</c>, findings in <c>broken-*.expected.txt</c>, both under <c>===</c> titles.
/// </summary>
internal static class BrokenDocuments
{
    internal static Dictionary<string, string> Read(string file)
    {
        var cases = new Dictionary<string, string>();
        foreach (var block in SheetFiles.Text(file).Split("=== ", StringSplitOptions.RemoveEmptyEntries))
        {
            var end = block.IndexOf('\n', StringComparison.Ordinal);
            cases.Add(block[..end], block[(end + 1)..]);
        }

        return cases;
    }

    /// <summary>One line a finding: severity, place, text, remedy, subject.</summary>
    internal static string Written(IEnumerable<Finding> findings) =>
        string.Concat(
            findings.Select(f => $"{f.Severity} {f.Place.Line}:{f.Place.Column} [{f.Subject}] {f.Text} >> {f.Remedy}\n")
        );
}
