using Slowglow.Circuits.Building;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Circuits.Models.Transformer;

/// <summary>
/// What lies between a winding and the core, and between neighbouring windings, in slots that conduct nothing in health. The start of a
/// winding is where it breaks through, or its finish where the start is at chassis; one that is earthed within has nothing to show.
/// </summary>
internal sealed class WindingInsulation
{
    private const string ToCore = " to core";
    private readonly Dictionary<string, int> slots = [];

    public WindingInsulation(CircuitBuilder builder, TransformerPart part)
    {
        var live = part.Windings.Select(w => (w.Name, Net: LiveEnd(part, w))).Where(w => w.Net is not null).ToList();
        foreach (var (name, net) in live)
        {
            slots[name + ToCore] = builder.Conductance(builder.Row(net!), -1, CircuitBuilder.OpenSiemens);
        }

        foreach (var (one, other) in live.Zip(live.Skip(1)).Where(p => p.First.Net != p.Second.Net))
        {
            slots[$"{one.Name} to {other.Name}"] = builder.Conductance(
                builder.Row(one.Net!),
                builder.Row(other.Net!),
                CircuitBuilder.OpenSiemens
            );
        }
    }

    public IEnumerable<Fault> FaultsOf(string part)
    {
        foreach (var where in slots.Keys)
        {
            foreach (var ohms in Severities.InsulationLeak)
            {
                yield return new Fault(part, where, FailureMode.Leaky, ohms);
            }

            // Windings are insulated from each other twice over: a leak is as far as it goes.
            if (where.EndsWith(ToCore, StringComparison.Ordinal))
            {
                yield return new Fault(part, where, FailureMode.Short);
            }
        }
    }

    /// <summary>False when the fault is of nothing that lies here.</summary>
    public bool Apply(Fault fault, double[] values)
    {
        if (!slots.TryGetValue(fault.Where, out var slot) || (fault.Mode == FailureMode.Leaky && fault.Severity <= 0))
        {
            return false;
        }

        values[slot] = fault.Mode == FailureMode.Short ? CircuitBuilder.ShortSiemens : 1 / fault.Severity;
        return true;
    }

    private static string? LiveEnd(TransformerPart part, Winding winding)
    {
        string[] nets = [.. winding.Pins.Select(p => part.NetOf(p)!)];
        var earthedWithin = nets[1..^1].Contains(NetTable.Ground) || (nets[0] == NetTable.Ground && nets[^1] == NetTable.Ground);
        return earthedWithin ? null
            : nets[0] != NetTable.Ground ? nets[0]
            : nets[^1];
    }
}
