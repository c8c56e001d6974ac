using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Jobs;

/// <summary>Takes down what the meter said.</summary>
public sealed class TakeReading(OpenJob open, TimelineWriter timeline)
{
    private const int LongestLine = 200;

    /// <summary>Stores the line when it can be read, in the setup the bench stands in unless it names another. Nothing is stored when it cannot.</summary>
    public async Task<Parsed<StandingReading>> RunAsync(int jobNumber, string line, CancellationToken cancel = default)
    {
        line = line.Trim();
        if (line.Length is 0 or > LongestLine)
        {
            return Wrong(
                line.Length == 0 ? "Nothing was typed." : "That is too long for a reading.",
                "WHERE = VALUE, for example V1.6 = 62 V"
            );
        }

        var opened = await open.RunAsync(jobNumber, cancel);
        if (opened.Value?.Unit is not { } unit)
        {
            return new(null, opened.Findings);
        }

        var read = ReadingsReader.ReadLine(line, unit.Sheet, opened.Value.ChosenFirst);
        if (read.Value is not { } reading || read.HasErrors)
        {
            // A single line has no place worth naming.
            return new(null, [.. read.Findings.Select(f => f with { Place = Place.None })]);
        }

        var stored = await timeline.AppendAsync(
            jobNumber,
            (sequence, at) =>
                new ReadingTaken
                {
                    JobNumber = jobNumber,
                    Sequence = sequence,
                    At = at,
                    Line = line,
                    Setup = reading.Setup.Name,
                },
            cancel
        );
        return stored.Value is { } entry
            ? new(new(entry.Sequence, entry.At, reading), read.Findings)
            : new(null, stored.Findings);
    }

    private static Parsed<StandingReading> Wrong(string text, string remedy) =>
        new(null, [new(Severity.Error, Place.None, text, remedy)]);
}
