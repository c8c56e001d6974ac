using Slowglow.Workshop.Customers;
using Slowglow.Workshop.Money;
using Slowglow.Workshop.Timeline;
using Slowglow.Workshop.Units;

namespace Slowglow.Workshop.Jobs;

/// <summary>A repair. What was fixed at the counter stands here; all that happened since is in the timeline.</summary>
public sealed class Job
{
    /// <summary>As on the label; above 0.</summary>
    public required int Number { get; init; }
    public required Customer Customer { get; init; }
    public required UnitOnBench Unit { get; init; }

    /// <summary>Null until one has been drawn and laid beside the job.</summary>
    public DrawnSheet? Sheet { get; set; }

    /// <summary>When it came over the counter.</summary>
    public required DateTimeOffset BookedIn { get; init; }

    /// <summary>When the customer was told at the counter that it would be ready; null when nothing was promised.</summary>
    public DateTimeOffset? Promised { get; init; }

    /// <summary>"Call me above", as said at the counter: null when the customer set none.</summary>
    public Amount? Limit { get; init; }

    /// <summary>Everything that happened, oldest first. Only ever added to.</summary>
    public List<TimelineEntry> Timeline { get; init; } = [];

    /// <summary>Where the job stands after everything in its timeline.</summary>
    public JobStanding Standing() => JobStanding.After(Timeline);
}
