using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>
/// Ends of a winding that meet nothing but diodes: while none conducts, only leakage and picofarads hold them, so that their mean against chassis
/// is no property of the circuit. (A meter's 10 megohm decides it; the volts across the winding are sound.)
/// </summary>
internal static class LooseNets
{
    public static HashSet<string> Of(Sheet sheet)
    {
        var held = sheet
            .Parts.Where(p => p is not (DiodePart or TransformerPart))
            .SelectMany(p => p.Pins)
            .Select(p => p.Net)
            .ToHashSet();
        held.Add(NetTable.Ground);
        var loose = new HashSet<string>();
        foreach (var transformer in sheet.Parts.OfType<TransformerPart>())
        {
            foreach (var winding in transformer.Windings)
            {
                var nets = winding.Pins.Select(p => transformer.NetOf(p)!).ToList();
                if (!nets.Any(held.Contains))
                {
                    loose.UnionWith(nets);
                }
            }
        }

        return loose;
    }
}
