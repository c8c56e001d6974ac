namespace Slowglow.Cli.Json;

/// <summary>A rail with the design in the circuit, volts.</summary>
internal sealed record RewindRailJson(string Winding, string Where, string Kind, double Belongs, double Gives);
