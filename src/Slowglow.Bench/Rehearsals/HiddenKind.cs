namespace Slowglow.Bench.Rehearsals;

/// <summary>What is hidden in a unit.</summary>
public enum HiddenKind
{
    /// <summary>One fault, with the fuse it blew, if any.</summary>
    Single,

    /// <summary>Two faults of two parts.</summary>
    Double,

    /// <summary>A part of another value: the program weighs a few such values, not this one.</summary>
    WrongValue,

    /// <summary>Solder between two nets that have nothing to do with each other: nothing that the program weighs.</summary>
    Bridged,
}
