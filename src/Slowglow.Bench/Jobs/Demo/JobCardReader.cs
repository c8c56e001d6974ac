using System.Globalization;
using Slowglow.Sheets;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Money;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Slowglow.Bench.Jobs.Demo;

/// <summary>Reads job cards.</summary>
public static class JobCardReader
{
    // The YAML reader recurses: depth is bounded by bounding what can nest.
    private const int LongestCard = 20_000;
    private const int LongestLine = 500;
    private const int MostBrackets = 100;

    /// <summary>Reads a card. What cannot be understood is left out, with a warning; only text that is no YAML gives no card.</summary>
    public static Parsed<JobCard> Read(string text)
    {
        if (
            text.Length > LongestCard
            || text.Count(c => c is '[' or '{') > MostBrackets
            || text.Split('\n').Any(l => l.Length > LongestLine)
        )
        {
            return Wrong(Place.None, "The job card is far too long, or has lines or brackets without end.");
        }

        try
        {
            var stream = new YamlStream();
            stream.Load(new StringReader(text));
            return stream.Documents is [{ RootNode: YamlMappingNode root }]
                ? Read(root)
                : Wrong(new Place(1, 1), "The job card has no keys.");
        }
        catch (YamlException e)
        {
            return Wrong(new Place((int)e.Start.Line, (int)e.Start.Column), "The job card cannot be read from here on.");
        }
    }

    private static Parsed<JobCard> Read(YamlMappingNode root)
    {
        List<Finding> findings = [];
        return new(
            new JobCard(
                Word(root, "customer") ?? "unnamed",
                Word(root, "phone") ?? Word(root, "contact") ?? "",
                Word(root, "maker"),
                Word(root, "model"),
                Word(root, "serial") ?? "",
                Day(root, "booked in", findings),
                Day(root, "promised", findings),
                Money(root, findings),
                State(root, findings),
                Word(root, "complaint"),
                Condition(root)
            ),
            findings
        );
    }

    private static IReadOnlyList<string> Condition(YamlMappingNode root) =>
        Find(root, "condition") switch
        {
            YamlSequenceNode list =>
            [
                .. list.Children.OfType<YamlScalarNode>().Select(s => s.Value ?? "").Where(s => s.Length > 0),
            ],
            YamlScalarNode { Value.Length: > 0 } one => [one.Value!],
            _ => [],
        };

    private static DateTimeOffset? Day(YamlMappingNode root, string key, List<Finding> findings)
    {
        if (Word(root, key) is not { } word)
        {
            return null;
        }

        if (DateTimeOffset.TryParse(word, CultureInfo.InvariantCulture, DateTimeStyles.AssumeLocal, out var day))
        {
            return day;
        }

        findings.Add(Unclear(root, key, word, "a day such as 2026-11-20"));
        return null;
    }

    private static Amount? Money(YamlMappingNode root, List<Finding> findings)
    {
        if (Word(root, "limit") is not { } word)
        {
            return null;
        }

        var amount = Amount.Read(word);
        if (amount is null)
        {
            findings.Add(Unclear(root, "limit", word, "a figure and a currency: 200 EUR"));
        }

        return amount;
    }

    private static JobState State(YamlMappingNode root, List<Finding> findings)
    {
        if (Word(root, "state") is not { } word)
        {
            return JobState.OnTheBench;
        }

        if (JobStateWords.Read(word) is { } state)
        {
            return state;
        }

        findings.Add(Unclear(root, "state", word, string.Join(", ", Enum.GetValues<JobState>().Select(JobStateWords.Say))));
        return JobState.OnTheBench;
    }

    private static Finding Unclear(YamlMappingNode root, string key, string word, string remedy)
    {
        var at = Find(root, key)!.Start;
        return new(
            Severity.Warning,
            new Place((int)at.Line, (int)at.Column),
            $"\"{word}\" is not understood under {key}.",
            remedy
        );
    }

    private static string? Word(YamlMappingNode root, string key) =>
        Find(root, key) is YamlScalarNode { Value.Length: > 0 } scalar ? scalar.Value : null;

    private static YamlNode? Find(YamlMappingNode root, string key) =>
        root.Children.FirstOrDefault(c => c.Key is YamlScalarNode { Value: { } name } && Plain(name) == key).Value;

    private static string Plain(string key) => key.Replace('-', ' ').Replace('_', ' ').Trim().ToLowerInvariant();

    private static Parsed<JobCard> Wrong(Place place, string text) =>
        new(
            null,
            [
                new(
                    Severity.Error,
                    place,
                    text,
                    "customer, phone, maker, model, serial, booked-in, promised, complaint, condition, limit"
                ),
            ]
        );
}
