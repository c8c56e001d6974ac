using Slowglow.Sheets;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Jobs;

/// <summary>Writes something worth remembering into the timeline.</summary>
public sealed class WriteNote(OpenJob open, TimelineWriter timeline)
{
    private const int Longest = 2000;

    public async Task<IReadOnlyList<Finding>> RunAsync(int jobNumber, string text, CancellationToken cancel = default)
    {
        text = text.Trim();
        if (text.Length is 0 or > Longest)
        {
            var wrong = text.Length == 0 ? "The note is empty." : $"The note is longer than {Longest} characters.";
            return [new(Severity.Error, Place.None, wrong, "A sentence or two.")];
        }

        var opened = await open.RunAsync(jobNumber, cancel);
        if (opened.Value is null)
        {
            return opened.Findings;
        }

        var stored = await timeline.AppendAsync(
            jobNumber,
            (sequence, at) =>
                new NoteWritten
                {
                    JobNumber = jobNumber,
                    Sequence = sequence,
                    At = at,
                    Text = text,
                },
            cancel
        );
        return stored.Findings;
    }
}
