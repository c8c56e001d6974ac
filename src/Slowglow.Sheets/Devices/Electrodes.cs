namespace Slowglow.Sheets.Devices;

/// <summary>Which electrodes each kind must bring out, in a section of its own (true) or shared (false).</summary>
internal static class Electrodes
{
    private static readonly Dictionary<DeviceKind, (string[] Own, string[] Shared)> Needed = new()
    {
        [DeviceKind.Triode] = (["a", "g", "k"], []),
        [DeviceKind.Pentode] = (["a", "g", "k", "g2"], []),
        [DeviceKind.RectifierValve] = (["a"], ["k"]),
        [DeviceKind.Diode] = (["a", "k"], []),
        [DeviceKind.Zener] = (["a", "k"], []),
        [DeviceKind.Led] = (["a", "k"], []),
        [DeviceKind.Bjt] = (["c", "b", "e"], []),
        [DeviceKind.Jfet] = (["d", "g", "s"], []),
        [DeviceKind.Mosfet] = (["d", "g", "s"], []),
        [DeviceKind.OpAmp] = (["in+", "in-", "out"], ["v+", "v-"]),
        [DeviceKind.GasRegulator] = (["a", "k"], []),
        [DeviceKind.Optocoupler] = (["a", "k", "ra", "rb"], []),
        [DeviceKind.Darlington] = (["c", "b", "e"], []),
        [DeviceKind.Regulator] = (["in", "out"], []),
    };

    /// <summary>What is wrong with the device's pins; empty when they are complete.</summary>
    public static IEnumerable<string> Problems(Device device)
    {
        var pins = device.Pinout;
        foreach (var twice in pins.GroupBy(p => p.Number).Where(g => g.Count() > 1))
        {
            yield return $"pin {twice.Key} is given twice";
        }

        var (own, shared) = Needed[device.Kind];
        foreach (var section in Sections(device))
        {
            foreach (var electrode in own.Where(e => Count(pins, section, e) != 1))
            {
                yield return $"section {section} needs one pin for {electrode}";
            }
        }

        foreach (var electrode in shared.Where(e => Count(pins, 0, e) != 1))
        {
            yield return $"one shared pin is needed for {electrode}";
        }

        if (device.Kind == DeviceKind.Regulator && pins.Count(p => p.Electrode is "gnd" or "adj") != 1)
        {
            yield return "a regulator needs one pin for gnd or adj";
        }
    }

    private static IEnumerable<int> Sections(Device device)
    {
        var found = device.Pinout.Select(p => p.Section).Where(s => s > 0).Distinct().Order().ToList();
        return found.Count > 0 ? found : [1];
    }

    private static int Count(IReadOnlyList<DevicePin> pins, int section, string electrode) =>
        pins.Count(p => p.Section == section && p.Electrode == electrode);
}
