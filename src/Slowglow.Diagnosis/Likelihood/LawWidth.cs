using Slowglow.Circuits;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Likelihood;

/// <summary>
/// By how much a device's own spread is widened, because its law is not quite that of the device in hand either. Judgement: a saturation current
/// is read off at working current, and at the microamperes of an ohm reading through a junction it may be anything within a factor of three.
/// What a chip takes at volts far below those it is made for is known no better.
/// </summary>
internal static class LawWidth
{
    private const double JunctionInOhms = 4;
    private const double Junction = 2;
    private const double Valve = 1.5;
    private const double Other = 1.25;
    private const double ChipWithoutPower = 4;

    /// <summary>Factor on the change that one standard deviation of the parameter makes, at least 1.</summary>
    public static double Of(RandomParameter parameter, Probe probe) =>
        parameter.What.Split(' ')[0] switch
        {
            "is" or "is1" or "is2" => probe.Kind == ProbeKind.Ohm ? JunctionInOhms : Junction,
            "kg1" or "mu" or "k" => Valve,
            "iq" => probe.Kind is ProbeKind.Ohm or ProbeKind.Diode ? ChipWithoutPower : 1,
            "bf" or "bf1" or "bf2" or "beta" or "vto" => Other,
            _ => 1,
        };
}
