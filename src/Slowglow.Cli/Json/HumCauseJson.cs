namespace Slowglow.Cli.Json;

/// <summary>
/// Ripple of a rail and what of it stands at the output, volts rms; <c>net</c> is null for all that comes by no rail, <c>heater</c> names
/// the valve whose heater leaks to its cathode.
/// </summary>
internal sealed record HumCauseJson(string? Net, string? Heater, double Ripple, double Level, double Main, double Twice);
