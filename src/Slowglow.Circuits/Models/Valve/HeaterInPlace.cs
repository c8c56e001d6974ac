using Slowglow.Circuits.Building;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;

namespace Slowglow.Circuits.Models.Valve;

/// <summary>A valve's heater where the sheet draws it: a plain hot resistance, in two halves when it has a tap.</summary>
internal sealed class HeaterInPlace
{
    private readonly List<(int Slot, double Siemens)> halves = [];

    public HeaterInPlace(CircuitBuilder builder, Part part, Device device)
    {
        if (!device.Limits.TryGetValue("heaterVolts", out var volts) || !device.Limits.TryGetValue("heaterAmps", out var amps))
        {
            return;
        }

        string[] ends = [.. Nets(part, device, "h").Concat(Nets(part, device, "f"))];

        // A filament is its own cathode: its other end is the cathode's pin.
        if (ends.Length == 1)
        {
            ends = [.. ends, .. Nets(part, device, "k").Take(1)];
        }

        var tap = Nets(part, device, "ht").FirstOrDefault();
        if (tap is not null && builder.IsShared(tap) && ends.Length == 2)
        {
            // Rated with the halves side by side.
            Add(builder, ends[0], tap, amps / 2 / volts);
            Add(builder, tap, ends[1], amps / 2 / volts);
        }
        else if (ends.Length == 2 && ends.All(builder.IsShared))
        {
            Add(builder, ends[0], ends[1], tap is null ? amps / volts : amps / volts / 4);
        }
    }

    public bool IsDrawn => halves.Count > 0;

    private static IEnumerable<string> Nets(Part part, Device device, string electrode) =>
        device.Pinout.Where(p => p.Electrode == electrode).Select(p => part.NetOf(p.Number)).OfType<string>();

    private void Add(CircuitBuilder builder, string one, string other, double siemens) =>
        halves.Add((builder.Conductance(builder.Row(one), builder.Row(other), siemens), siemens));

    /// <summary>Burnt out or pulled.</summary>
    public void Open(double[] slots)
    {
        foreach (var (slot, _) in halves)
        {
            slots[slot] = CircuitBuilder.OpenSiemens;
        }
    }

    /// <summary>Cold tungsten: the hot resistance over about 6 (common practice for heaters, no source).</summary>
    public void Cool(double[] slots)
    {
        foreach (var (slot, siemens) in halves)
        {
            slots[slot] = 6 * siemens;
        }
    }
}
