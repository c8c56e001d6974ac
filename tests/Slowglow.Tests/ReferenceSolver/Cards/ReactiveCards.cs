using Slowglow.Circuits;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Inductor;
using Slowglow.Sheets.Parts.Loudspeaker;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Capacitors, chokes and loudspeakers.</summary>
internal sealed class ReactiveCards : PartCards
{
    /// <summary>What our solver leaves of an open capacitor.</summary>
    private const double TraceFarads = 1e-15;

    public override bool Write(Deck deck, Part part, FaultsOf faults, Bench bench)
    {
        switch (part)
        {
            case CapacitorPart capacitor:
                WriteCapacitor(deck, capacitor, faults);
                return true;
            case InductorPart choke:
                WriteCoil(deck, choke, faults, choke.CopperOhms, choke.Henries);
                return true;
            case LoudspeakerPart speaker when bench.Setup.LoadOhms is { } load:
                WriteCoil(deck, speaker, faults, Math.Min(load, OpenOhms), 0);
                return true;
            case LoudspeakerPart speaker:
                WriteCoil(deck, speaker, faults, speaker.DcOhms, VoiceCoil(speaker));
                return true;
            default:
                return false;
        }
    }

    private static void WriteCapacitor(Deck deck, CapacitorPart part, FaultsOf faults)
    {
        var (a, b) = (deck.Node(part.Pins[0].Net), deck.Node(part.Pins[1].Net));
        var leak = faults.Has(FailureMode.Short) ? ShortOhms : faults.Severity(FailureMode.Leaky, OpenOhms);
        if (faults.Has(FailureMode.Backwards))
        {
            // Our own statement of a reversed electrolytic: 0.3 ohm coulombs.
            leak = 0.3 / (part.Farads * part.RatedVolts);
        }

        var factor = faults.Severity(FailureMode.Drifted, 1) * faults.Severity(FailureMode.WrongValue, 1);
        deck.Resistor(part.Designator + "leak", a, b, leak);
        if (faults.Has(FailureMode.DriedOut))
        {
            WriteDry(deck, part, a, b, faults.Severity(FailureMode.DriedOut, 1));
            return;
        }

        deck.Capacitor(part.Designator, a, b, faults.Has(FailureMode.Open) ? TraceFarads : part.Farads * factor);
    }

    /// <summary>What is left of an electrolytic, in series with a resistance of loss tangent 0.15 over the share left, at 100 Hz.</summary>
    private static void WriteDry(Deck deck, CapacitorPart part, string a, string b, double left)
    {
        var farads = part.Farads * left;
        var plate = part.Farads < 0.9e-6 ? a : deck.Inner(part.Designator, "plate");
        if (plate != a)
        {
            deck.Resistor(part.Designator + "dry", a, plate, 0.15 / left / (2 * Math.PI * 100 * farads));
        }

        deck.Capacitor(part.Designator, plate, b, farads);
    }

    /// <summary>Copper in series with an inductance; what has been lifted or burnt keeps its inductance behind an open.</summary>
    private static void WriteCoil(Deck deck, Part part, FaultsOf faults, double ohms, double henries)
    {
        var (a, b) = (deck.Node(part.Pins[0].Net), deck.Node(part.Pins[1].Net));
        var middle = deck.Inner(part.Designator, "copper");
        deck.Guess(middle, v => v(b));
        deck.Resistor(part.Designator, a, middle, faults.Has(FailureMode.Open) ? OpenOhms : ohms);
        deck.Coil(part.Designator, middle, b, Math.Max(henries * faults.Severity(FailureMode.Drifted, 1), 1e-12));
        deck.Resistor(part.Designator + "leak", a, b, faults.Has(FailureMode.Short) ? ShortOhms : OpenOhms);
        var core = faults.Has(FailureMode.Short, "to core") ? ShortOhms : faults.Severity(FailureMode.Leaky, OpenOhms, "to core");
        deck.Resistor(part.Designator + "core", a, "0", core);
    }

    /// <summary>The inductance that brings a loudspeaker's impedance to nominal at 1 kHz.</summary>
    private static double VoiceCoil(LoudspeakerPart part) =>
        Math.Sqrt(Math.Max(0, (part.NominalOhms * part.NominalOhms) - (part.DcOhms * part.DcOhms))) / (2 * Math.PI * 1000);
}
