using Slowglow.Circuits;

namespace Slowglow.Diagnosis;

/// <summary>A fault and its probability, 0 to 1.</summary>
public readonly record struct FaultShare(Fault Fault, double Probability);
