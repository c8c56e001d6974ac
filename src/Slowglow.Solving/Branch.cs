namespace Slowglow.Solving;

/// <summary>
/// An element whose current depends on one weighted sum u of the unknowns and is fed back with the same weights: two-terminal parts
/// have weights +1 and -1, a winding has its turns as the weight of the flux.
/// </summary>
/// <param name="Kind">What relates current and u.</param>
/// <param name="Rows">Unknowns taking part; ground left out.</param>
/// <param name="Weights">Weight of each.</param>
/// <param name="Slot">First slot: g, C or r.</param>
/// <param name="SteadySlot">Conductance: constant source in series; -1 for none. Flow: the slot of L.</param>
/// <param name="SwingSlot">Conductance: amplitude of the sine in series; -1 for none.</param>
public sealed record Branch(BranchKind Kind, int[] Rows, double[] Weights, int Slot, int SteadySlot = -1, int SwingSlot = -1);
