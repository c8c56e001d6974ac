using Slowglow.Drawing.Symbols;
using Slowglow.Sheets;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Contact;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Inductor;
using Slowglow.Sheets.Parts.Lamp;
using Slowglow.Sheets.Parts.OpAmp;
using Slowglow.Sheets.Parts.Regulator;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Parts.Valve;

namespace Slowglow.Drawing.Stages;

/// <summary>Which nets are chassis, rails, mains side or windings; the others carry the signal. And how high each stands.</summary>
internal sealed class NetRoles
{
    /// <summary>Farads; smaller capacitors decouple or couple, they hold no rail. Common practice, no source.</summary>
    private const double SmallestReservoir = 0.9e-6;

    private readonly Sheet sheet;
    private readonly IReadOnlyDictionary<string, double> potentials;
    private readonly HashSet<string> rails = [];
    private readonly HashSet<string> windings = [];
    private readonly HashSet<string> held;
    private readonly HashSet<string> electrodes;

    public NetRoles(Sheet sheet, IReadOnlyDictionary<string, double> potentials)
    {
        this.sheet = sheet;
        this.potentials = potentials;
        held = [.. sheet.Parts.OfType<CapacitorPart>().Where(c => c.Farads >= SmallestReservoir).SelectMany(FarFromChassis)];
        electrodes = [.. sheet.Parts.SelectMany(OwnElectrodes)];
        FindWindings();
        FindRails();
    }

    /// <summary>Rails, highest volts first.</summary>
    public IReadOnlyList<string> Rails => [.. sheet.Nets.Names.Where(rails.Contains).OrderByDescending(Height)];

    public bool IsRail(string net) => rails.Contains(net);

    /// <summary>A rail below chassis, which is drawn below it.</summary>
    public bool IsBelow(string net) => IsRail(net) && Height(net) < 0;

    /// <summary>Chassis, rails, mains and transformer windings: what parts the stages from the supply.</summary>
    public bool IsSupply(string net) => net == NetTable.Ground || rails.Contains(net) || windings.Contains(net);

    /// <summary>Volts of the net against chassis; NaN when nobody worked them out. Rails without figures stand in the sheet's order.</summary>
    public double Height(string net)
    {
        if (net == NetTable.Ground)
        {
            return 0;
        }

        if (potentials.TryGetValue(net, out var volts) && double.IsFinite(volts))
        {
            return volts;
        }

        return rails.Contains(net) ? 1000 - sheet.Nets.Names.ToList().IndexOf(net) : double.NaN;
    }

    private static IEnumerable<string> FarFromChassis(Part part)
    {
        var (a, b) = (part.Pins[0].Net, part.Pins[1].Net);
        return (a == NetTable.Ground) == (b == NetTable.Ground) ? [] : [a == NetTable.Ground ? b : a];
    }

    /// <summary>Nets of electrodes that a stage works with: never rails, however well they are bypassed.</summary>
    private static IEnumerable<string> OwnElectrodes(Part part)
    {
        string[] names = part switch
        {
            ValvePart { Device.Kind: DeviceKind.Triode or DeviceKind.Pentode } => ["g", "k", "g2"],
            TransistorPart => ["b", "g", "e", "s"],
            OpAmpPart => ["in+", "in-", "out"],
            _ => [],
        };
        return part.Pins.Where(p => names.Contains(Sections.Bare(p.Electrode))).Select(p => p.Net);
    }

    private void FindWindings()
    {
        windings.UnionWith([NetTable.Live, NetTable.Neutral, NetTable.Earth]);
        foreach (var transformer in sheet.Parts.OfType<TransformerPart>().Where(t => !t.IsOutput))
        {
            windings.UnionWith(transformer.Pins.Select(p => p.Net));
        }

        var primaries = sheet
            .Parts.OfType<TransformerPart>()
            .Where(t => !t.IsOutput)
            .SelectMany(t => t.Windings.Where(w => w.IsPrimary).SelectMany(w => w.Pins).Select(t.NetOf))
            .OfType<string>();
        HashSet<string> mains = [NetTable.Live, NetTable.Neutral, .. primaries];
        for (var grown = true; grown; )
        {
            grown = false;
            foreach (
                var part in sheet.Parts.Where(p =>
                    p is FusePart or ContactPart or LampPart && p.Pins.Any(e => mains.Contains(e.Net))
                )
            )
            {
                grown |= part.Pins.Where(p => p.Net != NetTable.Ground).Aggregate(false, (any, p) => mains.Add(p.Net) || any);
            }
        }

        windings.UnionWith(mains);
        windings.Remove(NetTable.Ground);
    }

    private void FindRails()
    {
        Queue<string> queue = [];
        foreach (var net in Rectified().Concat(ChipSupplies()).Concat(Regulated()))
        {
            Add(net, queue);
        }

        while (queue.TryDequeue(out var net))
        {
            foreach (var part in sheet.Parts.Where(p => p.Pins.Any(e => e.Net == net)))
            {
                foreach (var next in FedThrough(part, net))
                {
                    Add(next, queue);
                }
            }
        }

        // A winding may stand on a rail (a filament on its cathode): then it is a rail.
        windings.ExceptWith(rails);
    }

    private void Add(string net, Queue<string> queue)
    {
        if (net != NetTable.Ground && !electrodes.Contains(net) && rails.Add(net))
        {
            queue.Enqueue(net);
        }
    }

    private IEnumerable<string> Rectified()
    {
        foreach (var diode in sheet.Parts.OfType<DiodePart>().Where(d => d.Device.Kind == DeviceKind.Diode))
        {
            var far = diode.Pins.Where(p => !windings.Contains(p.Net)).ToArray();
            if (far.Length == 1)
            {
                yield return far[0].Net;
            }
        }

        var cathodes = sheet
            .Parts.OfType<ValvePart>()
            .Where(v => v.Device.Kind == DeviceKind.RectifierValve)
            .SelectMany(v => v.Pins.Where(p => p.Electrode.StartsWith('k')));
        foreach (var pin in cathodes)
        {
            yield return pin.Net;
        }
    }

    private IEnumerable<string> ChipSupplies() =>
        sheet
            .Parts.OfType<OpAmpPart>()
            .SelectMany(p => p.Pins.Where(e => e.Electrode is "v+" or "v-"))
            .Select(e => e.Net)
            .Where(Joined);

    private IEnumerable<string> Regulated() =>
        sheet
            .Parts.OfType<RegulatorPart>()
            .SelectMany(p => p.Pins.Where(e => e.Electrode is "in" or "out"))
            .Select(e => e.Net)
            .Where(Joined);

    private bool Joined(string net) => sheet.Parts.SelectMany(p => p.Pins).Count(p => p.Net == net) > 1;

    private IEnumerable<string> FedThrough(Part part, string net)
    {
        var others = part.Pins.Select(p => p.Net).Where(n => n != net);
        return part switch
        {
            ResistorPart or InductorPart or LampPart => others.Where(held.Contains),
            FusePart or ContactPart => others.Where(n => !windings.Contains(n)),
            TransistorPart { Device.Kind: DeviceKind.Bjt or DeviceKind.Darlington or DeviceKind.Mosfet } pass
                when Is(pass, net, "c", "d") => PassedOn(pass),
            _ => [],
        };
    }

    private static bool Is(Part part, string net, params string[] pins) => pins.Any(p => part.NetOf(p) == net);

    /// <summary>The emitter of a pass transistor is a rail when a capacitor holds it and it hardly differs from its base.</summary>
    private IEnumerable<string> PassedOn(TransistorPart pass)
    {
        if ((pass.NetOf("e") ?? pass.NetOf("s")) is { } emitter && held.Contains(emitter))
        {
            electrodes.Remove(emitter);
            yield return emitter;
        }
    }
}
