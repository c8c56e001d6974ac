using Slowglow.Sheets.Devices;

namespace Slowglow.Sheets.Parsing;

/// <summary>Names of electrodes in envelopes and packages that hold several devices.</summary>
internal static class SectionNames
{
    /// <summary>
    /// "a" in the first section, "a2" in the second; "g_2" where "g2" is already a screen. Op-amps number every section: "in+1".
    /// </summary>
    internal static string Electrode(Device device, DevicePin pin)
    {
        if (pin.Electrode is "nc" or "ic" or "")
        {
            return "";
        }

        var several = device.Pinout.Any(p => p.Section > 1);
        if (pin.Section <= 1)
        {
            return device.Kind == DeviceKind.OpAmp && several && pin.Section == 1 ? pin.Electrode + "1" : pin.Electrode;
        }

        var plain = $"{pin.Electrode}{pin.Section}";
        var taken = char.IsAsciiDigit(pin.Electrode[^1]) || device.Pinout.Any(p => p.Electrode == plain);
        return taken ? $"{pin.Electrode}_{pin.Section}" : plain;
    }
}
