namespace Slowglow.Workshop.Orders;

/// <param name="Order">Sequence of the order in the timeline.</param>
/// <param name="Text">What they said.</param>
/// <param name="Promised">The day they name now; null when they name none.</param>
/// <param name="Tracking">Empty when there is none.</param>
public sealed record OrderChase(int Order, string Text, DateOnly? Promised, string Tracking);
