using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>A healthy world under drive, for relatives to start from.</summary>
/// <param name="Cycle">Its settled cycle.</param>
/// <param name="Mean">Its unknowns at rest.</param>
/// <param name="States">Its states at rest.</param>
internal sealed record DrivenReference(CycleReference Cycle, double[] Mean, double[] States);
