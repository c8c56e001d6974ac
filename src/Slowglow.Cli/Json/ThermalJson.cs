namespace Slowglow.Cli.Json;

/// <summary>Standing current of an output pair and how far it feeds its own heating: at 1 and above it runs away.</summary>
internal sealed record ThermalJson(IReadOnlyList<string> Parts, double Amps, double Watts, double JunctionGain, double WholeGain);
