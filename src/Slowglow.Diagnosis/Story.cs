using Slowglow.Circuits;

namespace Slowglow.Diagnosis;

/// <summary>What may be wrong with a unit before anything is known of it.</summary>
/// <param name="Faults">The cause first; then the fuse it blew, if any.</param>
/// <param name="Prior">Probability, 0 to 1.</param>
public sealed record Story(IReadOnlyList<Fault> Faults, double Prior);
