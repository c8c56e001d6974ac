using Slowglow.Circuits.Models.Transistor;
using Slowglow.Circuits.Models.Valve;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>
/// Finds output devices that take turns: one of them going off is how class AB works, not a limit. Valves on the two ends of one winding of
/// an output transformer; transistors of opposite polarity whose emitters (or sources) meet through a few ohms.
/// </summary>
internal sealed class PushPull(AskedWorld asked)
{
    private const double MeetOhms = 30;
    private const double WireOhms = 1;
    private readonly ResistorLinks links = new(asked.Circuit);

    /// <summary>Elements that have a partner, with it.</summary>
    public IReadOnlyDictionary<int, int> Partners()
    {
        var all = asked.Circuit.Equations.Elements;
        List<(int A, int B, double Ohms)> pairs = [];
        for (var a = 0; a < all.Count; a++)
        {
            for (var b = a + 1; b < all.Count; b++)
            {
                if (OhmsOf(all[a], all[b]) is { } ohms)
                {
                    pairs.Add((a, b, ohms));
                }
            }
        }

        // The nearest two belong together.
        var found = new Dictionary<int, int>();
        foreach (var (a, b, _) in pairs.OrderBy(p => p.Ohms).Where(p => !found.ContainsKey(p.A) && !found.ContainsKey(p.B)))
        {
            (found[a], found[b]) = (b, a);
        }

        return found;
    }

    /// <summary>Ohms through which two elements meet when they take turns; null when they do not.</summary>
    private double? OhmsOf(Element a, Element b) =>
        (a.Law, b.Law) switch
        {
            (PentodeLaw, PentodeLaw) or (TriodeLaw, TriodeLaw) => ShareAWinding(a.Rows[0], b.Rows[0]) ? 0 : null,
            (BjtLaw, BjtLaw) when Opposite(a, b, (int)BjtLaw.Constant.Polarity) => Meet(a.Rows[^1], b.Rows[^1]),
            (FieldEffectLaw, FieldEffectLaw) when Opposite(a, b, (int)FieldEffectLaw.Constant.Polarity) => Meet(
                a.Rows[^1],
                b.Rows[^1]
            ),
            _ => null,
        };

    private bool Opposite(Element a, Element b, int polarity) =>
        asked.State.Slots[a.Slot + polarity] * asked.State.Slots[b.Slot + polarity] < 0;

    private double? Meet(int a, int b) => a < 0 || b < 0 ? null : links.Between(a, b, MeetOhms);

    private bool Near(int a, int b, double ohms) => a == b || Math.Abs(asked.State.OhmsBetween(a, b)) < ohms;

    private bool ShareAWinding(int a, int b)
    {
        foreach (var winding in asked.Circuit.Sheet.Parts.OfType<TransformerPart>().Where(t => t.IsOutput).SelectMany(Ends))
        {
            var (start, finish) = winding;
            if ((Wired(a, start) && Wired(b, finish)) || (Wired(a, finish) && Wired(b, start)))
            {
                return true;
            }
        }

        return false;
    }

    private bool Wired(int row, int pin) => row >= 0 && pin >= 0 && Near(row, pin, WireOhms);

    private IEnumerable<(int Start, int Finish)> Ends(TransformerPart part) =>
        part.Windings.Where(w => w.Pins.Count > 2).Select(w => (Row(part, w.Pins[0]), Row(part, w.Pins[^1])));

    private int Row(TransformerPart part, string pin) => asked.Circuit.Rows.GetValueOrDefault(part.NetOf(pin) ?? "", -1);
}
