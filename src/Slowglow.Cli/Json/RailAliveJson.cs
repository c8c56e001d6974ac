namespace Slowglow.Cli.Json;

/// <summary>A regulated rail and the lowest mains at which it stands; null when it never does.</summary>
internal sealed record RailAliveJson(string Rail, double Volts, double Mains);
