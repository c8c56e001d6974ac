namespace Slowglow.Sheets.Parts.Wire;

/// <summary>A wire or link. Pins: 1, 2, which keep nets of their own (a wire can break).</summary>
public sealed record WirePart : Part;
