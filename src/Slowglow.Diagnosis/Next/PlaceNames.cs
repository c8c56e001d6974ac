using Slowglow.Sheets;
using Slowglow.Sheets.Parts.OpAmp;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Parts.Valve;

namespace Slowglow.Diagnosis.Next;

/// <summary>What a technician would call a net: its word on the drawing, else the valve, transistor or op-amp pin on it.</summary>
internal sealed class PlaceNames
{
    private readonly Dictionary<string, string> names = [];

    public PlaceNames(Sheet sheet)
    {
        foreach (var part in sheet.Parts.Where(p => p is ValvePart or TransistorPart or OpAmpPart))
        {
            foreach (var pin in part.Pins)
            {
                var end = part is TransistorPart && pin.Electrode.Length > 0 ? pin.Electrode : pin.Number;
                names.TryAdd(pin.Net, $"{part.Designator}.{end}");
            }
        }
    }

    public string Of(string net) =>
        net.Contains('.', StringComparison.Ordinal) && names.TryGetValue(net, out var pin) ? pin : net;
}
