using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Regulator;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Valve;

namespace Slowglow.Power;

/// <summary>Faults of the parts between the inlet and the rails.</summary>
public static class SupplyFaults
{
    /// <summary>Smaller capacitors hang on rails to decouple, not to smooth (common practice, no source).</summary>
    private const double SmallestReservoir = 0.9e-6;

    /// <summary>Hard faults of transformers, rectifiers, reservoirs, regulators, fuses and what feeds rail from rail.</summary>
    public static IReadOnlyList<Fault> Hard(Circuit circuit, IReadOnlyList<string> rails)
    {
        var parts = circuit.Sheet.Parts.ToDictionary(p => p.Designator);
        var nets = rails.ToHashSet();
        return
        [
            .. circuit.Faults.Where(f =>
                f.Mode is FailureMode.Open or FailureMode.Short or FailureMode.Dead or FailureMode.StuckHigh
                && IsSupply(parts[f.Part], nets, circuit.Sheet)
            ),
        ];
    }

    /// <summary>Shorts behind the mains transformer, or of its turns: what a limiter lamp has to tell. A primary to its core is told by any lamp.</summary>
    public static IReadOnlyList<Fault> DeadShorts(Circuit circuit, IReadOnlyList<string> rails)
    {
        var parts = circuit.Sheet.Parts.ToDictionary(p => p.Designator);
        var first = rails.Count > 0 ? rails[0] : "";
        return
        [
            .. circuit.Faults.Where(f =>
                f.Mode == FailureMode.Short
                && !f.Where.Contains("core", StringComparison.Ordinal)
                && parts[f.Part] is TransformerPart { IsOutput: false } or CapacitorPart { Farads: >= SmallestReservoir }
                && (parts[f.Part] is TransformerPart || parts[f.Part].Pins.Any(p => p.Net == first))
            ),
        ];
    }

    private static bool IsSupply(Part part, HashSet<string> rails, Sheet sheet)
    {
        bool OnRail() => part.Pins.Any(p => rails.Contains(p.Net));
        return part switch
        {
            TransformerPart t => !t.IsOutput,
            FusePart or RegulatorPart => true,
            CapacitorPart c => c.Farads >= SmallestReservoir && OnRail(),
            DiodePart => OnRail() || OnWinding(part, sheet),
            ValvePart v => v.Device.Kind == Sheets.Devices.DeviceKind.RectifierValve,
            ResistorPart => part.Pins.All(p => rails.Contains(p.Net)),
            _ => false,
        };
    }

    private static bool OnWinding(Part part, Sheet sheet) =>
        sheet
            .Parts.OfType<TransformerPart>()
            .Where(t => !t.IsOutput)
            .Any(t => part.Pins.Any(p => p.Net != NetTable.Ground && t.Pins.Any(w => w.Net == p.Net)));
}
