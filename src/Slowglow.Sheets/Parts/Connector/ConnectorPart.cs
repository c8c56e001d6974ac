namespace Slowglow.Sheets.Parts.Connector;

/// <summary>Where a lead goes in. Electrically nothing; it names places and switched contacts.</summary>
public sealed record ConnectorPart : Part;
