using Slowglow.Circuits;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>
/// Transformers: each section between neighbouring pins is its copper in series with an ideal winding; all windings share a core node
/// whose volts are the volts per rated volt (or per relative turn), held up by the magnetising inductance alone.
/// </summary>
internal sealed class TransformerCards : PartCards
{
    public override bool Write(Deck deck, Part part, FaultsOf faults, Bench bench)
    {
        if (part is not TransformerPart transformer)
        {
            return false;
        }

        var core = deck.Inner(part.Designator, "core");
        foreach (var winding in transformer.Windings)
        {
            WriteWinding(deck, transformer, winding, core, faults);
        }

        deck.Coil(part.Designator + "core", core, "0", Magnetising.PerTurn(transformer, bench.Sheet.Mains));
        return true;
    }

    private static void WriteWinding(Deck deck, TransformerPart part, Winding winding, string core, FaultsOf faults)
    {
        string PinNode(int i) => deck.Node(part.Pins.First(p => p.Number == winding.Pins[i]).Net);
        for (var i = 0; i < winding.SectionVolts.Count; i++)
        {
            var name = FormattableString.Invariant($"{part.Designator}{winding.Name}{i}");
            var inner = deck.Inner(name, "emf");
            var open = faults.Has(FailureMode.Open, winding.Name);
            deck.Resistor(name, PinNode(i), inner, open ? OpenOhms : winding.SectionOhms[i]);
            deck.Card($"e{name} {inner} {PinNode(i + 1)} {core} 0 {winding.SectionVolts[i]:R}");
            deck.Card($"f{name} 0 {core} e{name} {winding.SectionVolts[i]:R}");
        }

        if (faults.Has(FailureMode.Short, winding.Name))
        {
            deck.Resistor(part.Designator + winding.Name + "short", PinNode(0), PinNode(winding.Pins.Count - 1), ShortOhms);
        }
    }
}
