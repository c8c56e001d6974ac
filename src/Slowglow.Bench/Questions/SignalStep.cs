namespace Slowglow.Bench.Questions;

/// <summary>One step of a signal, from net to net through a part. Active when the part drives the second net rather than joins the two.</summary>
internal readonly record struct SignalStep(string From, string To, string Part, bool Active);
