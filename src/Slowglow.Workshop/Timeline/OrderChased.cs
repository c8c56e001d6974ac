namespace Slowglow.Workshop.Timeline;

/// <summary>A supplier was asked where the goods are.</summary>
public sealed class OrderChased : EntryWith<Orders.OrderChase>;
