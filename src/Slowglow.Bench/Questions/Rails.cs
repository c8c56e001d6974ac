using Slowglow.Sheets;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.Inductor;
using Slowglow.Sheets.Parts.Lamp;
using Slowglow.Sheets.Parts.Regulator;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>Finds the supply rails of a sheet: nets with a reservoir or smoothing capacitor to ground that are fed from a rectifier.</summary>
internal sealed class Rails
{
    /// <summary>Smaller capacitors decouple or couple; they smooth nothing. Common practice, no source.</summary>
    private const double SmallestReservoir = 0.9e-6;

    private readonly Sheet sheet;
    private readonly NetJoins joins;
    private readonly HashSet<string> fed = [];
    private readonly HashSet<string> smoothed;
    private readonly Queue<string> queue = [];

    private Rails(Sheet sheet, Setup setup)
    {
        this.sheet = sheet;
        joins = NetJoins.In(setup, sheet);
        smoothed = [.. sheet.Parts.OfType<CapacitorPart>().Where(c => c.Farads >= SmallestReservoir).SelectMany(FarEnds)];
    }

    /// <summary>Canonical nets, in the sheet's order, with switches as they stand in the setup.</summary>
    public static IReadOnlyList<string> Of(Sheet sheet, Setup setup)
    {
        var finder = new Rails(sheet, setup);
        finder.FeedFromRectifiers();
        finder.Spread();
        var rails = sheet.Nets.Names.Where(n => finder.fed.Contains(finder.joins.Of(n)) && finder.HasCapacitorItself(n));
        return [.. rails];
    }

    private IEnumerable<string> FarEnds(CapacitorPart capacitor)
    {
        var (a, b) = (joins.Of(capacitor.Pins[0].Net), joins.Of(capacitor.Pins[1].Net));
        return (a == NetTable.Ground, b == NetTable.Ground) switch
        {
            (true, false) => [b],
            (false, true) => [a],
            _ => [],
        };
    }

    private bool HasCapacitorItself(string net) =>
        smoothed.Contains(joins.Of(net))
        && sheet.Parts.OfType<CapacitorPart>().Any(c => c.Farads >= SmallestReservoir && c.Pins.Any(p => p.Net == net));

    private void FeedFromRectifiers()
    {
        var windingNets = sheet
            .Parts.OfType<TransformerPart>()
            .Where(t => !t.IsOutput)
            .SelectMany(t => t.Windings.Where(w => !w.IsPrimary).SelectMany(w => w.Pins).Select(t.NetOf))
            .OfType<string>()
            .Select(joins.Of)
            .ToHashSet();

        foreach (var diode in sheet.Parts.OfType<DiodePart>().Where(d => d.Device.Kind == DeviceKind.Diode))
        {
            var ends = diode.Pins.Select(p => joins.Of(p.Net)).ToArray();
            var fromWinding = ends.Where(windingNets.Contains).ToArray();
            if (fromWinding.Length == 1)
            {
                Feed(ends.First(e => e != fromWinding[0]));
            }
        }

        foreach (var valve in sheet.Parts.OfType<ValvePart>().Where(v => v.Device.Kind == DeviceKind.RectifierValve))
        {
            foreach (var cathode in valve.Pins.Where(p => p.Electrode.StartsWith('k')))
            {
                Feed(joins.Of(cathode.Net));
            }
        }
    }

    private void Spread()
    {
        while (queue.TryDequeue(out var net))
        {
            foreach (var part in sheet.Parts)
            {
                foreach (var next in FedThrough(part, net))
                {
                    Feed(next);
                }
            }
        }
    }

    private IEnumerable<string> FedThrough(Part part, string net)
    {
        switch (part)
        {
            case ResistorPart or InductorPart or LampPart:
                return part.Pins.Any(p => joins.Of(p.Net) == net)
                    ? part.Pins.Select(p => joins.Of(p.Net)).Where(smoothed.Contains)
                    : [];
            case RegulatorPart:
                return Through(part, net, "in", "out");
            case TransistorPart { Device.Kind: DeviceKind.Bjt or DeviceKind.Darlington }:
                return Through(part, net, "c", "e").Where(smoothed.Contains);
            default:
                return [];
        }
    }

    private IEnumerable<string> Through(Part part, string net, string from, string to)
    {
        var (start, end) = (part.NetOf(from), part.NetOf(to));
        return start is not null && end is not null && joins.Of(start) == net ? [joins.Of(end)] : [];
    }

    private void Feed(string net)
    {
        if (net != NetTable.Ground && fed.Add(net))
        {
            queue.Enqueue(net);
        }
    }
}
