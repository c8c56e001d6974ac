namespace Slowglow.Sheets.Parts.Lamp;

/// <summary>Filament lamp. Pins: 1, 2. RatedVolts and RatedWatts are always set.</summary>
public sealed record LampPart : Part;
