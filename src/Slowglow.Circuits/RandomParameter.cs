namespace Slowglow.Circuits;

/// <summary>Something that differs from specimen to specimen (or from socket to socket, for the mains): independent, one standard deviation.</summary>
/// <param name="Part">Designator, or "mains".</param>
/// <param name="What">"value", "emission", "mains volts" ...</param>
/// <param name="Sigma">Relative standard deviation.</param>
public sealed record RandomParameter(string Part, string What, double Sigma);
