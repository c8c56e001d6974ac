using Slowglow.Circuits;

namespace Slowglow.Cli.Json;

/// <summary>Magnitude in ohms, phase in degrees; sigma is one standard deviation in ohms.</summary>
internal sealed record ImpedanceJson(double Frequency, double Ohms, double Phase, double Sigma)
{
    public static ImpedanceJson From(ImpedancePoint p) => new(p.Hertz, p.Ohms, p.PhaseDegrees, p.SigmaOhms);
}
