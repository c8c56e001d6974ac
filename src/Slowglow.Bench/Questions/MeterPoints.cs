using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Contact;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Inductor;
using Slowglow.Sheets.Parts.Lamp;
using Slowglow.Sheets.Parts.Loudspeaker;
using Slowglow.Sheets.Parts.Optocoupler;
using Slowglow.Sheets.Parts.Pot;
using Slowglow.Sheets.Parts.Relay;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Wire;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>The readings a technician would take all over a unit: live ones, and those with the power off.</summary>
internal static class MeterPoints
{
    /// <summary>DC of every net, ripple of every rail, AC of every winding of a mains transformer, inlet current.</summary>
    public static IReadOnlyList<Probe> Live(Sheet sheet, Setup setup)
    {
        var dc = Nets(sheet).Select(n => ToGround(n, ProbeKind.Dc));
        var ripple = Rails.Of(sheet, setup).Select(n => ToGround(n, ProbeKind.Ac) with { SaidAsRipple = true });
        var windings = sheet.Parts.OfType<TransformerPart>().Where(t => !t.IsOutput).SelectMany(t => Windings(t, ProbeKind.Ac));
        IEnumerable<Probe> inlet = HasInlet(sheet) ? [new(Probe.Inlet, Probe.Inlet, NetTable.Ground, ProbeKind.Ac)] : [];
        return [.. dc, .. ripple, .. windings, .. inlet];
    }

    /// <summary>Ohms across everything with copper or carbon in it, diode test across every diode.</summary>
    public static IReadOnlyList<Probe> Cold(Sheet sheet) => [.. sheet.Parts.SelectMany(ColdProbes).Where(p => p.Red != p.Black)];

    private static IEnumerable<Probe> ColdProbes(Part part) =>
        part switch
        {
            ResistorPart or FusePart or InductorPart or LoudspeakerPart or RelayPart => [Across(part, ProbeKind.Ohm)],
            OptocouplerPart cell => [Between(cell, "a", "k", ProbeKind.Diode), Between(cell, "ra", "rb", ProbeKind.Ohm)],
            DiodePart => [Across(part, ProbeKind.Diode)],
            PotPart pot => [Between(pot, "1", "3", ProbeKind.Ohm)],
            TransformerPart transformer => Windings(transformer, ProbeKind.Ohm),
            _ => [],
        };

    /// <summary>Nets worth a live reading: not ground, not the mains side, not a pin left unconnected.</summary>
    private static IEnumerable<string> Nets(Sheet sheet)
    {
        var joins = NetJoins.ByWires(sheet);
        var mainsSide = MainsSide(sheet, joins);
        var ends = sheet.Parts.SelectMany(p => p.Pins).GroupBy(p => p.Net).ToDictionary(g => g.Key, g => g.Count());
        var named = sheet.Signals.SelectMany(s => new[] { s.In, s.Out }).ToHashSet();
        return sheet.Nets.Names.Where(n =>
            n != NetTable.Ground && !mainsSide.Contains(n) && (named.Contains(n) || ends.GetValueOrDefault(n) > 1)
        );
    }

    /// <summary>What hangs on the inlet before any transformer. A DC reading there says nothing and is dangerous to take.</summary>
    private static HashSet<string> MainsSide(Sheet sheet, NetJoins joins)
    {
        HashSet<string> side = [NetTable.Live, NetTable.Neutral, NetTable.Earth];
        var primaries = sheet
            .Parts.OfType<TransformerPart>()
            .Where(t => !t.IsOutput)
            .SelectMany(t => t.Windings.Where(w => w.IsPrimary).SelectMany(w => w.Pins).Select(t.NetOf));
        side.UnionWith(primaries.OfType<string>().Where(n => !joins.IsGround(n)));

        bool grown;
        do
        {
            grown = false;
            foreach (var part in sheet.Parts.Where(p => CarriesMains(p) && p.Pins.Any(e => side.Contains(e.Net))))
            {
                grown |= part.Pins.Where(p => !joins.IsGround(p.Net)).Aggregate(false, (any, p) => side.Add(p.Net) || any);
            }
        } while (grown);
        return side;
    }

    private static bool CarriesMains(Part part) =>
        part is WirePart or FusePart or ContactPart or LampPart or ResistorPart or CapacitorPart or InductorPart;

    private static bool HasInlet(Sheet sheet) =>
        sheet.Parts.Any(p => p.Pins.Any(e => e.Net is NetTable.Live or NetTable.Neutral));

    /// <summary>Every winding from end to end, and each section of a tapped one.</summary>
    private static IEnumerable<Probe> Windings(TransformerPart transformer, ProbeKind kind)
    {
        foreach (var winding in transformer.Windings)
        {
            yield return Between(transformer, winding.Pins[0], winding.Pins[^1], kind);
            for (var i = 1; winding.Pins.Count > 2 && i < winding.Pins.Count; i++)
            {
                yield return Between(transformer, winding.Pins[i - 1], winding.Pins[i], kind);
            }
        }
    }

    private static Probe ToGround(string net, ProbeKind kind) => new(net, net, NetTable.Ground, kind);

    private static Probe Across(Part part, ProbeKind kind) => new(part.Designator, part.Pins[0].Net, part.Pins[1].Net, kind);

    private static Probe Between(Part part, string red, string black, ProbeKind kind) =>
        new($"{part.Designator}.{red} - {part.Designator}.{black}", part.NetOf(red)!, part.NetOf(black)!, kind);
}
