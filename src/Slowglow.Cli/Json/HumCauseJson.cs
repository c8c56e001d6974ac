namespace Slowglow.Cli.Json;

/// <summary>Ripple of a rail and what of it stands at the output, volts rms; <c>net</c> is null for all that comes by no rail.</summary>
internal sealed record HumCauseJson(string? Net, double Ripple, double Level, double Main, double Twice);
