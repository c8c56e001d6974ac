namespace Slowglow.Web.Bench;

/// <summary>One row of the chart of levels. Zero or NaN where there is no figure.</summary>
/// <param name="Name">What is compared.</param>
/// <param name="Now">Volts rms with the suspect's fault.</param>
/// <param name="Belongs">Volts rms of a healthy unit.</param>
public sealed record LevelMark(string Name, double Now, double Belongs);
