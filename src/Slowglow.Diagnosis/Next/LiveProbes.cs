using Slowglow.Sheets;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Next;

/// <summary>Readings with the power on: DC on every net, ripple on rails, windings, small drops, levels.</summary>
internal sealed class LiveProbes(Sheet sheet)
{
    /// <summary>The drop across a resistor below this many ohms says what its two ends read alone cannot.</summary>
    private const double SmallOhms = 330;

    private readonly PlaceNames names = new(sheet);
    private readonly HashSet<string> mains = MainsSide.Of(sheet);

    public IEnumerable<Probe> Volts() => [.. Dc(), .. Ripple(), .. Windings(), .. Drops(), Inlet];

    public IEnumerable<Probe> Levels() => Nets().Select(n => new Probe(names.Of(n), n, NetTable.Ground, ProbeKind.Level, 1000));

    private static Probe Inlet => new(Probe.Inlet, Probe.Inlet, "", ProbeKind.Ac);

    private IEnumerable<Probe> Dc() => Nets().Select(n => new Probe(names.Of(n), n, NetTable.Ground, ProbeKind.Dc));

    /// <summary>Nets where at least two ends meet, off the mains side.</summary>
    private IEnumerable<string> Nets()
    {
        var ends = sheet.Parts.SelectMany(p => p.Pins).GroupBy(p => p.Net).ToDictionary(g => g.Key, g => g.Count());
        return sheet.Nets.Names.Where(n =>
            n != NetTable.Ground && n != NetTable.Earth && !mains.Contains(n) && ends.GetValueOrDefault(n) > 1
        );
    }

    private IEnumerable<Probe> Ripple() =>
        sheet
            .Parts.OfType<CapacitorPart>()
            .Where(c => c.Style == CapacitorStyle.Electrolytic && c.Pins.Any(p => p.Net == NetTable.Ground))
            .Select(c => c.Pins.First(p => p.Net != NetTable.Ground || c.Pins.All(q => q.Net == NetTable.Ground)).Net)
            .Where(n => n != NetTable.Ground && !mains.Contains(n))
            .Select(n => new Probe(names.Of(n), n, NetTable.Ground, ProbeKind.Ac, 0, true));

    private IEnumerable<Probe> Windings() =>
        from t in sheet.Parts.OfType<TransformerPart>()
        where !t.IsOutput
        from w in t.Windings
        from ends in w.Pins.Zip(w.Pins.Skip(1)).Append((w.Pins[0], w.Pins[^1]))
        let probe = Between(t, ends.Item1, ends.Item2, ProbeKind.Ac)
        where probe is not null
        select probe;

    private IEnumerable<Probe> Drops()
    {
        foreach (var r in sheet.Parts.OfType<ResistorPart>().Where(r => r.Ohms <= SmallOhms && !IsGrounded(r)))
        {
            yield return new(r.Designator, r.Pins[0].Net, r.Pins[1].Net, ProbeKind.Dc);
        }
        foreach (var q in sheet.Parts.OfType<TransistorPart>())
        {
            var (a, b) = q.Device.Kind is DeviceKind.Bjt or DeviceKind.Darlington ? ("b", "e") : ("g", "s");
            if (Between(q, a, b, ProbeKind.Dc) is { } probe)
            {
                yield return probe;
            }
        }
    }

    private bool IsGrounded(Part part) => part.Pins.Any(p => p.Net == NetTable.Ground || mains.Contains(p.Net));

    private static Probe? Between(Part part, string from, string to, ProbeKind kind)
    {
        var (red, black) = (part.NetOf(from), part.NetOf(to));
        return red is null || black is null
            ? null
            : new Probe($"{part.Designator}.{from} - {part.Designator}.{to}", red, black, kind);
    }
}
