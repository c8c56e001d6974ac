using Slowglow.Circuits;

namespace Slowglow.Diagnosis.RootCauses;

/// <summary>A part to look at because of a suspect.</summary>
/// <param name="Part">Designator of the part to check.</param>
/// <param name="Suspect">The part suspected.</param>
/// <param name="Story">The fault in whose world something runs past its rating: the suspect's own, or the one that would have killed it.</param>
/// <param name="Excess">By how much: of the part to check, or of the suspect.</param>
/// <param name="IsCause">True when the part would have killed the suspect; false when the suspect hurts the part.</param>
internal sealed record Concern(string Part, string Suspect, Fault Story, Overstress Excess, bool IsCause);
