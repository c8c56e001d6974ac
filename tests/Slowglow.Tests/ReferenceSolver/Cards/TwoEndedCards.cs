using Slowglow.Circuits;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Contact;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Lamp;
using Slowglow.Sheets.Parts.Relay;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Unknown;
using Slowglow.Sheets.Parts.Wire;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Everything with two ends that is a resistance at mains frequency.</summary>
internal sealed class TwoEndedCards : PartCards
{
    public override bool Write(Deck deck, Part part, FaultsOf faults, Bench bench)
    {
        if (OhmsOf(part, bench) is not { } ohms)
        {
            return false;
        }

        ohms *= faults.Severity(FailureMode.Drifted, 1) * faults.Severity(FailureMode.WrongValue, 1);
        ohms += faults.Severity(FailureMode.BadContact, 0);
        ohms = faults.Has(FailureMode.Open) ? OpenOhms : ohms;
        var (a, b) = (deck.Node(part.Pins[0].Net), deck.Node(part.Pins[1].Net));
        deck.Resistor(part.Designator, a, b, ohms);

        // A short must also be one beside a fraction of an ohm.
        var shorted = part is ResistorPart r ? Math.Min(ShortOhms, r.Ohms / 50) : ShortOhms;
        deck.Resistor(part.Designator + "leak", a, b, faults.Has(FailureMode.Short) ? shorted : OpenOhms);
        return true;
    }

    private static double? OhmsOf(Part part, Bench bench) =>
        part switch
        {
            ResistorPart r => r.Ohms,
            UnknownPart x => x.Ohms,
            FusePart f => f.Ohms,
            WirePart => JoinOhms,
            ContactPart c => bench.Position(c.SwitchName) == c.Position ? JoinOhms : OpenOhms,
            RelayPart k => k.Ohms,
            LampPart l => l.RatedVolts * l.RatedVolts / l.RatedWatts,
            _ => null,
        };
}
