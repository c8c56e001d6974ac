using Slowglow.Sheets.Devices;

namespace Slowglow.Sheets.Parsing;

/// <summary>Device kinds as messages name them.</summary>
internal static class KindWords
{
    internal static string Of(DeviceKind kind) =>
        kind switch
        {
            DeviceKind.Triode or DeviceKind.Pentode => "a valve",
            DeviceKind.GasRegulator => "a regulator valve",
            DeviceKind.Optocoupler => "an optocoupler",
            DeviceKind.RectifierValve => "a rectifier valve",
            DeviceKind.Diode => "a diode",
            DeviceKind.Zener => "a zener diode",
            DeviceKind.Led => "an LED",
            DeviceKind.OpAmp => "an op-amp",
            DeviceKind.Regulator => "a regulator",
            _ => "a transistor",
        };
}
