using System.Text;
using System.Text.RegularExpressions;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Workshop.Timeline;
using Slowglow.Workshop.Words;

namespace Slowglow.Bench.Jobs;

/// <summary>Makes setups of what the timeline says of them, by the rules of readings documents.</summary>
internal static partial class SetupsReader
{
    /// <summary>All setups of a job, the first one the default. One with the power off is always among them.</summary>
    public static Parsed<IReadOnlyList<Setup>> Read(IReadOnlyList<SetupDescribed> described, Sheet sheet)
    {
        IReadOnlyList<Setup> setups = [Setup.Default];
        IReadOnlyList<Finding> findings = [];
        if (described.Count > 0)
        {
            var document = ReadingsReader.Read(Document(described.Select(d => (d.Name, d.Keys))), sheet);
            setups = document.Value?.Setups is { Count: > 0 } read ? read : setups;
            findings = document.Findings;
        }

        return new(setups.Any(s => s.PowerOff) ? setups : [.. setups, Setup.Cold], findings);
    }

    /// <summary>Checks one new setup; findings speak of its keys.</summary>
    public static Parsed<Setup> ReadOne(string name, string keys, Sheet sheet)
    {
        if (!Name().IsMatch(name))
        {
            return Wrong(
                $"\"{name}\" will not do as the name of a setup.",
                "One word of letters and digits: slow, cold, halfmains."
            );
        }

        if (keys.Any(c => char.IsControl(c) || c is '{' or '}' or '#'))
        {
            return Wrong("Keys of a setup stand on one line, without braces.", "mains: 110 V, limiter: 40 W, valves: out");
        }

        var read = ReadingsReader.Read(Document([(name, keys)]), sheet);
        var findings = read.Findings.Select(f => f with { Place = Place.None }).ToList();
        var setup = read.Value?.Setups.FirstOrDefault(s => s.Name == name);
        return new(findings.Any(f => f.Severity == Severity.Error) ? null : setup, findings);
    }

    /// <summary>Keys as stored: in the words of documents, whichever were typed.</summary>
    public static string Understand(string keys) => WordChoice.UnderstandKeys(keys.Trim().TrimEnd(','));

    private static Parsed<Setup> Wrong(string text, string remedy) => new(null, [new(Severity.Error, Place.None, text, remedy)]);

    private static string Document(IEnumerable<(string Name, string Keys)> setups)
    {
        var text = new StringBuilder("setups:\n");
        foreach (var (name, keys) in setups)
        {
            text.Append("  ").Append(name).Append(": { ").Append(keys).Append(" }\n");
        }

        return text.Append("readings: []\n").ToString();
    }

    [GeneratedRegex("^[A-Za-z][A-Za-z0-9_-]{0,30}$", RegexOptions.CultureInvariant)]
    private static partial Regex Name();
}
