using Slowglow.Circuits;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Inductor;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Capacitors and chokes.</summary>
internal sealed class ReactiveCards : PartCards
{
    public override bool Write(Deck deck, Part part, FaultsOf faults, Bench bench)
    {
        switch (part)
        {
            case CapacitorPart capacitor:
                WriteCapacitor(deck, capacitor, faults);
                return true;
            case InductorPart choke:
                WriteChoke(deck, choke, faults);
                return true;
            default:
                return false;
        }
    }

    private static void WriteCapacitor(Deck deck, CapacitorPart part, FaultsOf faults)
    {
        var (a, b) = (deck.Node(part.Pins[0].Net), deck.Node(part.Pins[1].Net));
        var leak = faults.Has(FailureMode.Short) ? ShortOhms : faults.Severity(FailureMode.Leaky, OpenOhms);
        var farads = part.Farads * faults.Severity(FailureMode.DriedOut, 1) * faults.Severity(FailureMode.Drifted, 1);
        deck.Resistor(part.Designator + "leak", a, b, leak);
        if (!faults.Has(FailureMode.Open))
        {
            deck.Capacitor(part.Designator, a, b, farads);
        }
    }

    private static void WriteChoke(Deck deck, InductorPart part, FaultsOf faults)
    {
        var (a, b) = (deck.Node(part.Pins[0].Net), deck.Node(part.Pins[1].Net));
        if (faults.Has(FailureMode.Short) || faults.Has(FailureMode.Open))
        {
            deck.Resistor(part.Designator, a, b, faults.Has(FailureMode.Open) ? OpenOhms : ShortOhms);
            return;
        }

        var middle = deck.Inner(part.Designator, "copper");
        deck.Resistor(part.Designator, a, middle, part.CopperOhms);
        deck.Coil(part.Designator, middle, b, part.Henries * faults.Severity(FailureMode.Drifted, 1));
    }
}
