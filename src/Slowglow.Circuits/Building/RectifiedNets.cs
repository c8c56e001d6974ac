using Slowglow.Sheets;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Contact;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Lamp;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Parts.Wire;

namespace Slowglow.Circuits.Building;

/// <summary>Finds the nets on the direct-current side of a rectifier.</summary>
public static class RectifiedNets
{
    /// <summary>Nets that a diode or rectifier valve joins to a winding of a mains transformer; ground left out.</summary>
    public static IReadOnlyList<string> Of(Sheet sheet)
    {
        var alternating = AlternatingNets(sheet);
        return
        [
            .. sheet
                .Parts.SelectMany(Rectifiers)
                .SelectMany(d => new[] { (d.Anode, d.Cathode), (Anode: d.Cathode, Cathode: d.Anode) })
                .Where(d => alternating.Contains(d.Anode) && !alternating.Contains(d.Cathode) && d.Cathode != NetTable.Ground)
                .Select(d => d.Cathode)
                .Distinct(),
        ];
    }

    /// <summary>The same, with what fuses, wires and contacts join to them: a reservoir often stands behind the fuse of its rail.</summary>
    public static IReadOnlySet<string> WithJoints(Sheet sheet) => Joined(sheet, [.. Of(sheet)]);

    /// <summary>Nets of the windings of mains transformers, and what fuses, wires and contacts join to them.</summary>
    public static IReadOnlySet<string> AlternatingNets(Sheet sheet)
    {
        var nets = sheet
            .Parts.OfType<TransformerPart>()
            .Where(t => !t.IsOutput)
            .SelectMany(t => t.Pins.Select(p => p.Net))
            .Append(NetTable.Live)
            .Where(n => n != NetTable.Ground)
            .ToHashSet();
        return Joined(sheet, nets);
    }

    private static HashSet<string> Joined(Sheet sheet, HashSet<string> nets)
    {
        var joints = sheet.Parts.Where(p => p is FusePart or WirePart or ContactPart or LampPart).ToList();
        var grown = true;
        while (grown)
        {
            grown = false;
            foreach (var joint in joints)
            {
                var (a, b) = (joint.Pins[0].Net, joint.Pins[1].Net);
                if (a != NetTable.Ground && b != NetTable.Ground && nets.Contains(a) != nets.Contains(b))
                {
                    grown |= nets.Add(a) | nets.Add(b);
                }
            }
        }

        return nets;
    }

    private static IEnumerable<(string Anode, string Cathode)> Rectifiers(Part part) =>
        part switch
        {
            DiodePart d => [(d.Pins[0].Net, d.Pins[1].Net)],
            ValvePart { Device.Kind: DeviceKind.RectifierValve } v => v
                .Device.Pinout.Where(p => p.Electrode == "a")
                .Select(p =>
                    (
                        v.NetOf(p.Number) ?? "",
                        v.NetOf(
                            v.Device.Pinout.FirstOrDefault(k =>
                                k.Electrode == "k" && (k.Section == p.Section || k.Section == 0)
                            )?.Number
                                ?? ""
                        ) ?? ""
                    )
                ),
            _ => [],
        };
}
