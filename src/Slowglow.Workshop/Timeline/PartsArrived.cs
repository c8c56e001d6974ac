namespace Slowglow.Workshop.Timeline;

/// <summary>All or some of an order came.</summary>
public sealed class PartsArrived : EntryWith<Orders.Delivery>;
