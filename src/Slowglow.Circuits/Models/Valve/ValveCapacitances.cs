using Slowglow.Circuits.Building;
using Slowglow.Sheets.Devices;

namespace Slowglow.Circuits.Models.Valve;

/// <summary>
/// Capacitances between a valve's electrodes where its data give them: grid to anode, and what the sheets call input and output, taken to
/// the cathode. The wiring's own is not in them. Picofarads: only small signals see them.
/// </summary>
internal sealed class ValveCapacitances
{
    private readonly List<int> slots = [];

    public ValveCapacitances(CircuitBuilder builder, Device device, IEnumerable<SectionInPlace> sections)
    {
        foreach (var rows in sections.Select(s => s.Rows))
        {
            Lay(builder, device, "cga", rows[1], rows[0]);
            Lay(builder, device, "cgk", rows[1], rows[^1]);
            Lay(builder, device, "cak", rows[0], rows[^1]);
        }
    }

    private void Lay(CircuitBuilder builder, Device device, string constant, int plus, int minus)
    {
        if (plus != minus && device.Law.TryGetValue(constant, out var farads))
        {
            slots.Add(builder.Equations.NewSlot(farads));
            builder.Equations.AddStray(plus, minus, slots[^1]);
        }
    }

    /// <summary>Pulled from its socket.</summary>
    public void Remove(double[] values) => slots.ForEach(s => values[s] = 0);
}
