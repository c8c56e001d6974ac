using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Diagnosis.Next;

/// <summary>Nets tied to the mains: everything the inlet reaches without going through a transformer.</summary>
internal static class MainsSide
{
    public static HashSet<string> Of(Sheet sheet)
    {
        var reached = new HashSet<string> { NetTable.Live, NetTable.Neutral };
        bool grew;
        do
        {
            grew = false;
            foreach (var part in sheet.Parts.Where(p => p is not TransformerPart))
            {
                if (part.Pins.Any(p => reached.Contains(p.Net)))
                {
                    foreach (var pin in part.Pins.Where(p => !IsEarth(p.Net)))
                    {
                        grew |= reached.Add(pin.Net);
                    }
                }
            }
        } while (grew);
        return reached;
    }

    private static bool IsEarth(string net) => net is NetTable.Ground or NetTable.Earth;
}
