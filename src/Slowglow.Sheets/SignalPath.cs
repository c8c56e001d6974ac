namespace Slowglow.Sheets;

/// <summary>Where a test signal goes in and comes out.</summary>
/// <param name="Name">Name of the channel; "signal" when the sheet has a single unnamed path.</param>
/// <param name="In">Net the generator is connected to.</param>
/// <param name="Out">Net the level is judged at.</param>
/// <param name="SourceOhms">Generator resistance.</param>
/// <param name="LevelVolts">Open-circuit volts rms of the generator.</param>
/// <param name="LoadOhms">Load at the output; infinite when the sheet gives none.</param>
public sealed record SignalPath(string Name, string In, string Out, double SourceOhms, double LevelVolts, double LoadOhms);
