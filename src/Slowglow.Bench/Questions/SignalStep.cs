namespace Slowglow.Bench.Questions;

/// <summary>One step of a signal, from net to net through a part.</summary>
internal readonly record struct SignalStep(string From, string To, string Part, SignalStepKind Kind);
