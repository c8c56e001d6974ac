using Slowglow.Quantities;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.OpAmp;
using Slowglow.Sheets.Parts.Optocoupler;
using Slowglow.Sheets.Parts.Regulator;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Parts.Valve;

namespace Slowglow.Web.Bench.Words;

/// <summary>The limiting values of a part's type, from its data.</summary>
public static class DeviceLimits
{
    private static readonly (string Limit, string Words, string Unit)[] Known =
    [
        ("anodeVolts", "anode", "V"),
        ("anodeVoltsCold", "anode not drawing", "V"),
        ("screenVolts", "screen", "V"),
        ("screenVoltsCold", "screen not drawing", "V"),
        ("volts", "", "V"),
        ("inputVolts", "input", "V"),
        ("inverseVolts", "backwards", "V"),
        ("cathodeAmps", "cathode", "A"),
        ("amps", "", "A"),
        ("peakAmps", "peak", "A"),
        ("anodeWatts", "anode", "W"),
        ("screenWatts", "screen", "W"),
        ("watts", "", "W"),
        ("heaterVolts", "heater", "V"),
        ("heaterAmps", "heater", "A"),
    ];

    /// <summary>"anode 330 V, cathode 8 mA, anode 1.2 W"; empty for a part without a type number.</summary>
    public static string Say(Part part) =>
        Of(part) is not { } device
            ? ""
            : string.Join(
                ", ",
                Known
                    .Where(k => device.Limits.ContainsKey(k.Limit))
                    .Select(k => $"{k.Words} {Engineering.Format(device.Limits[k.Limit], k.Unit)}".Trim())
            );

    private static Device? Of(Part part) =>
        part switch
        {
            ValvePart p => p.Device,
            TransistorPart p => p.Device,
            DiodePart p => p.Device,
            OpAmpPart p => p.Device,
            RegulatorPart p => p.Device,
            OptocouplerPart p => p.Device,
            _ => null,
        };
}
