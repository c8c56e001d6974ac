namespace Slowglow.Workshop.Orders;

/// <param name="Part">What it is, and for where.</param>
/// <param name="Quantity">Pieces, above 0.</param>
/// <param name="Why">Found to be bad, or replaced with it; may be empty.</param>
public sealed record NeededPart(string Part, int Quantity, string Why);
