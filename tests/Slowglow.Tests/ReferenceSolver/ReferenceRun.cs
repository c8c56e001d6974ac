namespace Slowglow.Tests.ReferenceSolver;

/// <summary>What the reference is asked for, which decides how the bench feeds the circuit.</summary>
internal enum ReferenceRun
{
    /// <summary>The mains' own cycle.</summary>
    Cycle,

    /// <summary>At rest with the mains frozen at its crest and the cores of mains transformers open, where our own solver starts a world.</summary>
    Crest,

    /// <summary>No mains: small signals, each op-amp with its own open-loop pole.</summary>
    SmallSignal,

    /// <summary>No mains: a large signal at 1 kHz.</summary>
    LargeSignal,
}
