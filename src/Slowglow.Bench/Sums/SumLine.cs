namespace Slowglow.Bench.Sums;

/// <summary>One line of an answer, with its unit: "anode", "176 V".</summary>
public sealed record SumLine(string What, string Figure);
