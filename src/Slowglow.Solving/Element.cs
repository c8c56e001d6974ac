namespace Slowglow.Solving;

/// <summary>A nonlinear element in its place.</summary>
/// <param name="Law">Its law.</param>
/// <param name="Rows">Unknown of each terminal, the reference last; -1 is ground.</param>
/// <param name="Slot">First of its constants.</param>
public sealed record Element(Law Law, int[] Rows, int Slot);
