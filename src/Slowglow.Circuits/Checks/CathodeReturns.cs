using Slowglow.Sheets;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts.Valve;

namespace Slowglow.Circuits.Checks;

/// <summary>A valve section without a path from its cathode draws nothing: nearly always a slip of the pen.</summary>
internal static class CathodeReturns
{
    public static IEnumerable<Finding> Of(Sheet sheet)
    {
        foreach (var valve in sheet.Parts.OfType<ValvePart>())
        {
            var groups = new NetGroups();
            foreach (var (a, b) in sheet.Parts.Where(p => !ReferenceEquals(p, valve)).SelectMany(Joints.Of))
            {
                groups.Join(a, b);
            }

            foreach (var pin in valve.Device.Pinout.Where(p => p.Electrode == "k"))
            {
                var net = valve.NetOf(pin.Number);
                if (net is not null && IsUsed(valve, pin.Section, sheet) && !groups.Same(net, NetTable.Ground))
                {
                    yield return Missing(valve, pin);
                }
            }
        }
    }

    private static bool IsUsed(ValvePart valve, int section, Sheet sheet)
    {
        var anodes = valve
            .Device.Pinout.Where(p => p.Electrode == "a" && (p.Section == section || section == 0))
            .Select(p => valve.NetOf(p.Number));
        return anodes.Any(a => sheet.Parts.Any(p => !ReferenceEquals(p, valve) && p.Pins.Any(pin => pin.Net == a)));
    }

    private static Finding Missing(ValvePart valve, DevicePin pin) =>
        new(
            Severity.Error,
            valve.Place,
            $"the cathode of {valve.Designator} (pin {pin.Number}) has no path to GND",
            $"connect {valve.Designator}.{pin.Number} through its cathode resistor, or to GND",
            valve.Designator
        );
}
