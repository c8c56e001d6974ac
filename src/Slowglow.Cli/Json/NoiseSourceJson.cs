namespace Slowglow.Cli.Json;

/// <summary>What one part adds to the noise at the output, volts rms; sources add by squares.</summary>
internal sealed record NoiseSourceJson(string Part, string Kind, double Level);
