using Slowglow.Sheets;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Jobs;

/// <summary>Puts the complaint differently. The first wording stays in the timeline.</summary>
public sealed class ChangeComplaint(OpenJob open, TimelineWriter timeline)
{
    private const int Longest = 1000;

    public async Task<IReadOnlyList<Finding>> RunAsync(int jobNumber, string complaint, CancellationToken cancel = default)
    {
        complaint = string.Join(' ', complaint.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (complaint.Length > Longest)
        {
            return
            [
                new(
                    Severity.Error,
                    Place.None,
                    $"The complaint is longer than {Longest} characters.",
                    "Keep to what is wrong; the rest goes into a note."
                ),
            ];
        }

        var opened = await open.RunAsync(jobNumber, cancel);
        if (opened.Value is null || opened.Value.Standing.Complaint == complaint)
        {
            return opened.Value is null ? opened.Findings : [];
        }

        var stored = await timeline.AppendAsync(
            jobNumber,
            (sequence, at) =>
                new ComplaintChanged
                {
                    JobNumber = jobNumber,
                    Sequence = sequence,
                    At = at,
                    Complaint = complaint,
                },
            cancel
        );
        return stored.Findings;
    }
}
