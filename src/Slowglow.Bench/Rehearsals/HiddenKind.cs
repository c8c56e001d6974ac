namespace Slowglow.Bench.Rehearsals;

/// <summary>What is hidden in a unit.</summary>
public enum HiddenKind
{
    /// <summary>One fault, with the fuse it blew, if any.</summary>
    Single,

    /// <summary>Two faults of two parts.</summary>
    Double,

    /// <summary>A part of another value, or two nets that touch: nothing that the program weighs.</summary>
    OutOfCatalogue,
}
