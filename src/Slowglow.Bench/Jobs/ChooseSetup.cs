using Slowglow.Sheets;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Jobs;

/// <summary>Notes that the bench now stands in another setup.</summary>
public sealed class ChooseSetup(OpenJob open, TimelineWriter timeline)
{
    public async Task<IReadOnlyList<Finding>> RunAsync(int jobNumber, string setup, CancellationToken cancel = default)
    {
        var opened = await open.RunAsync(jobNumber, cancel);
        if (opened.Value is not { } job || job.Chosen.Name == setup)
        {
            return opened.Value is null ? opened.Findings : [];
        }

        if (job.Setups.All(s => s.Name != setup))
        {
            var known = string.Join(", ", job.Setups.Select(s => s.Name));
            return
            [
                new(Severity.Error, Place.None, $"No setup is called \"{setup}\".", $"Known: {known}. Or describe it first."),
            ];
        }

        var stored = await timeline.AppendAsync(
            jobNumber,
            (sequence, at) =>
                new SetupChosen
                {
                    JobNumber = jobNumber,
                    Sequence = sequence,
                    At = at,
                    Setup = setup,
                },
            cancel
        );
        return stored.Findings;
    }
}
