using Slowglow.Circuits.Building;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;

namespace Slowglow.Circuits.Models.Valve;

/// <summary>A valve's heater where the sheet draws it: a plain hot resistance, in two halves when it has a tap.</summary>
internal sealed class HeaterInPlace
{
    private readonly List<Half> halves = [];

    /// <summary>What warmth the emission in the slots was taken with; belongs to no branch.</summary>
    private readonly int warmth;

    private sealed record Half(int Slot, double Siemens, int One, int Other, double RatedVolts);

    public HeaterInPlace(CircuitBuilder builder, Part part, Device device)
    {
        warmth = builder.Equations.NewSlot(1);
        if (!device.Limits.TryGetValue("heaterVolts", out var volts) || !device.Limits.TryGetValue("heaterAmps", out var amps))
        {
            return;
        }

        string[] ends = [.. Nets(part, device, "h").Concat(Nets(part, device, "f"))];

        // A filament is its own cathode: its other end is the cathode's pin.
        IsFilament = ends.Length == 1;
        if (IsFilament)
        {
            ends = [.. ends, .. Nets(part, device, "k").Take(1)];
        }

        var tap = Nets(part, device, "ht").FirstOrDefault();
        if (tap is not null && builder.IsShared(tap) && ends.Length == 2)
        {
            // Rated with the halves side by side.
            Add(builder, ends[0], tap, amps / 2 / volts, volts);
            Add(builder, tap, ends[1], amps / 2 / volts, volts);
        }
        else if (ends.Length == 2 && ends.All(builder.IsShared))
        {
            Add(builder, ends[0], ends[1], tap is null ? amps / volts : amps / volts / 4, tap is null ? volts : 2 * volts);
        }
    }

    public bool IsDrawn => halves.Count > 0;

    /// <summary>True when the heater is the cathode.</summary>
    public bool IsFilament { get; }

    /// <summary>Row of one end, against which a cathode leaks.</summary>
    public int End => halves[0].One;

    private static IEnumerable<string> Nets(Part part, Device device, string electrode) =>
        device.Pinout.Where(p => p.Electrode == electrode).Select(p => part.NetOf(p.Number)).OfType<string>();

    private void Add(CircuitBuilder builder, string one, string other, double siemens, double ratedVolts)
    {
        var (a, b) = (builder.Row(one), builder.Row(other));
        halves.Add(new Half(builder.Conductance(a, b, siemens), siemens, a, b, ratedVolts));
    }

    /// <summary>Burnt out or pulled.</summary>
    public void Open(double[] slots)
    {
        foreach (var half in halves)
        {
            slots[half.Slot] = CircuitBuilder.OpenSiemens;
        }
    }

    /// <summary>Cold tungsten: the hot resistance over about 6 (common practice for heaters, no source).</summary>
    public void Cool(double[] slots)
    {
        foreach (var half in halves)
        {
            slots[half.Slot] = 6 * half.Siemens;
        }
    }

    /// <summary>Factor on the emission in the slots that the heater volts of the cycle ask for; 1 when next to nothing moved.</summary>
    public double Warm(StressView view)
    {
        var share = Math.Sqrt(halves.Average(h => view.MeanSquareAcross(h.One, h.Other) / (h.RatedVolts * h.RatedVolts)));
        var before = view.Slots[warmth];
        var now = Math.Max(CathodeWarmth.Of(share), 1e-6);
        if (Math.Abs(now - before) < 2e-3)
        {
            return 1;
        }

        view.Slots[warmth] = now;
        return now / before;
    }
}
