namespace Slowglow.Bench.Rehearsals;

/// <summary>Who chooses the readings. The suspects are weighed by the program in every case.</summary>
public enum Strategy
{
    /// <summary>The program's own next reading.</summary>
    Program,

    /// <summary>Rails, then the level halfway along what is left of the signal's way, then volts and ohms of the stage that is left.</summary>
    Halving,

    /// <summary>Any reading as well as any other.</summary>
    Random,

    /// <summary>The reading that takes the fewest minutes from where the bench stands.</summary>
    Cheapest,
}
