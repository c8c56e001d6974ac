using Slowglow.Circuits;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Likelihood;

/// <summary>
/// By how much a device's own spread is widened, because its law is not quite that of the device in hand either. Judgement: a saturation current
/// is read off at working current, and at the microamperes of an ohm reading through a junction it may be anything within a factor of three.
/// </summary>
internal static class LawWidth
{
    private const double JunctionInOhms = 4;
    private const double Junction = 2;
    private const double Valve = 1.5;
    private const double Other = 1.25;

    /// <summary>Factor on the change that one standard deviation of the parameter makes, at least 1.</summary>
    public static double Of(RandomParameter parameter, Probe probe) =>
        parameter.What.Split(' ')[0] switch
        {
            "is" or "is1" or "is2" => probe.Kind == ProbeKind.Ohm ? JunctionInOhms : Junction,
            "kg1" or "mu" or "k" => Valve,
            "bf" or "bf1" or "bf2" or "beta" or "vto" => Other,
            _ => 1,
        };
}
