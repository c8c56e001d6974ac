namespace Slowglow.Bench.Questions;

/// <summary>How a part hands a signal on.</summary>
internal enum SignalStepKind
{
    /// <summary>Copper, or a winding: it carries the signal wherever it leads and is never feedback by itself.</summary>
    Joint,

    /// <summary>A part that joins two nets: it may couple onward or feed back.</summary>
    Passive,

    /// <summary>A part that drives the second net from the first.</summary>
    Active,
}
