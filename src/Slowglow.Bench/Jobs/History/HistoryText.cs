using Slowglow.Circuits;
using Slowglow.Diagnosis;
using Slowglow.Sheets;

namespace Slowglow.Bench.Jobs.History;

/// <summary>Reads a history written by hand: a line for each past job on the sheet, # begins a remark.</summary>
public static class HistoryText
{
    /// <summary>Counts; value null when nothing was found before or a line is wrong, which the findings then say.</summary>
    public static Parsed<PastJobs> Read(string text, Circuit circuit)
    {
        List<FoundBefore> found = [];
        List<Finding> findings = [];
        foreach (var (line, number) in text.Split('\n').Select((l, i) => (l.Split('#')[0].Trim(), i + 1)))
        {
            if (line.Length == 0)
            {
                continue;
            }

            if (FoundText.Read(line, circuit) is { } job)
            {
                found.Add(job);
            }
            else
            {
                findings.Add(
                    new(
                        Severity.Error,
                        new Place(number, 1),
                        $"\"{line}\" does not begin with a part of this sheet that can fail",
                        "a line for each past job: R10 drifted up"
                    )
                );
            }
        }

        var counted = found.GroupBy(f => (f.Part, f.Mode)).Select(g => new FoundBefore(g.Key.Part, g.Key.Mode, g.Count()));
        return new(findings.Count > 0 || found.Count == 0 ? null : new PastJobs([.. counted]), findings);
    }
}
