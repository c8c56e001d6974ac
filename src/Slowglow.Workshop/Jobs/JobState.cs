namespace Slowglow.Workshop.Jobs;

/// <summary>How far a repair has come.</summary>
public enum JobState
{
    /// <summary>On the shelf, not looked at yet.</summary>
    BookedIn,

    /// <summary>Being worked on.</summary>
    OnTheBench,

    /// <summary>Stopped until a part comes.</summary>
    AwaitingParts,

    /// <summary>Stopped until the customer has answered.</summary>
    AwaitingCustomer,

    /// <summary>Repaired, playing for some hours before it may leave.</summary>
    OnSoak,

    /// <summary>Ready on the shelf.</summary>
    ReadyToCollect,

    /// <summary>Gone home.</summary>
    HandedOver,
}
