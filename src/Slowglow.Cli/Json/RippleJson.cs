namespace Slowglow.Cli.Json;

/// <summary>Ripple current of a capacitor, amperes rms.</summary>
internal sealed record RippleJson(string Part, double Rms);
