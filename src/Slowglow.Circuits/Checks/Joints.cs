using Slowglow.Sheets;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Connector;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.OpAmp;
using Slowglow.Sheets.Parts.Optocoupler;
using Slowglow.Sheets.Parts.Pot;
using Slowglow.Sheets.Parts.Regulator;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Parts.Valve;

namespace Slowglow.Circuits.Checks;

/// <summary>Which nets a part joins for direct current.</summary>
internal static class Joints
{
    public static IEnumerable<(string, string)> Of(Part part) =>
        part switch
        {
            CapacitorPart or ConnectorPart => [],
            TransformerPart t => t.Windings.SelectMany(w => w.Pins.Zip(w.Pins.Skip(1), (a, b) => (t.NetOf(a)!, t.NetOf(b)!))),
            PotPart p => [(p.Pins[0].Net, p.Pins[1].Net), (p.Pins[1].Net, p.Pins[2].Net)],
            ValvePart v => OfDevice(v, v.Device),
            TransistorPart q => OfDevice(q, q.Device),
            OpAmpPart u => OfDevice(u, u.Device),
            RegulatorPart u => OfDevice(u, u.Device),
            OptocouplerPart o => OfDevice(o, o.Device),
            _ => [(part.Pins[0].Net, part.Pins[1].Net)],
        };

    /// <summary>What holds a net by itself, without devices: resistances, windings, diodes.</summary>
    public static bool IsPassive(Part part) =>
        part is not (ValvePart or TransistorPart or OpAmpPart or RegulatorPart or DiodePart or OptocouplerPart);

    private static IEnumerable<(string, string)> OfDevice(Part part, Device device)
    {
        string[][] joined = device.Kind switch
        {
            DeviceKind.Triode or DeviceKind.RectifierValve or DeviceKind.GasRegulator =>
            [
                ["a", "k"],
            ],
            DeviceKind.Pentode =>
            [
                ["a", "k"],
                ["g2", "k"],
            ],
            DeviceKind.Bjt or DeviceKind.Darlington =>
            [
                ["c", "e"],
                ["b", "e"],
            ],
            DeviceKind.Jfet or DeviceKind.Mosfet =>
            [
                ["d", "s"],
            ],
            DeviceKind.Optocoupler =>
            [
                ["a", "k"],
                ["ra", "rb"],
            ],
            DeviceKind.OpAmp =>
            [
                ["out", "v+"],
                ["out", "v-"],
            ],
            DeviceKind.Regulator =>
            [
                ["in", "out"],
                ["out", "gnd"],
                ["out", "adj"],
            ],
            _ => [],
        };
        foreach (var section in device.Pinout.Select(p => p.Section).Distinct())
        {
            foreach (var pair in joined)
            {
                if (NetOf(part, device, section, pair[0]) is { } one && NetOf(part, device, section, pair[1]) is { } other)
                {
                    yield return (one, other);
                }
            }
        }

        foreach (var pair in HeaterPairs(part, device))
        {
            yield return pair;
        }
    }

    private static IEnumerable<(string, string)> HeaterPairs(Part part, Device device)
    {
        var nets = device
            .Pinout.Where(p => p.Electrode is "h" or "ht" or "f")
            .Select(p => part.NetOf(p.Number))
            .OfType<string>()
            .ToList();
        if (nets.Count == 1 && part.NetOf(device.Pinout.FirstOrDefault(p => p.Electrode == "k")?.Number ?? "") is { } cathode)
        {
            nets.Add(cathode);
        }

        return nets.Zip(nets.Skip(1));
    }

    private static string? NetOf(Part part, Device device, int section, string electrode)
    {
        var pin =
            device.Pinout.FirstOrDefault(p => p.Section == section && p.Electrode == electrode)
            ?? device.Pinout.FirstOrDefault(p => p.Section == 0 && p.Electrode == electrode);
        return pin is null ? null : part.NetOf(pin.Number);
    }
}
