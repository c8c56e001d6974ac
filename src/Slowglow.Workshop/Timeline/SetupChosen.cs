namespace Slowglow.Workshop.Timeline;

/// <summary>The bench was changed to another setup. Expectations follow it; what was measured stays what it was.</summary>
public sealed class SetupChosen : TimelineEntry
{
    /// <summary>Name of the setup.</summary>
    public required string Setup { get; init; }
}
