using Slowglow.Circuits;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Pot;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Pots and trimmers: two resistances and a wiper.</summary>
internal sealed class PotCards : PartCards
{
    /// <summary>What is left at an end of the track, as a fraction of the whole: a real wiper never reaches zero.</summary>
    private const double EndFraction = 1e-3;

    public override bool Write(Deck deck, Part part, FaultsOf faults, Bench bench)
    {
        if (part is not PotPart pot)
        {
            return false;
        }

        var ohms = pot.Ohms * faults.Severity(FailureMode.Drifted, 1);
        var lower = Math.Clamp(Below(pot.Taper, bench.Rotation(pot)), EndFraction, 1 - EndFraction);
        var (top, wiper, bottom) = (deck.Node(pot.Pins[0].Net), deck.Node(pot.Pins[1].Net), deck.Node(pot.Pins[2].Net));
        if (faults.Has(FailureMode.Open, "wiper"))
        {
            var inner = deck.Inner(part.Designator, "wiper");
            deck.Resistor(part.Designator + "w", inner, wiper, OpenOhms);
            wiper = inner;
        }

        var topOpen = faults.Has(FailureMode.Open, "top") || faults.Has(FailureMode.Open);
        var bottomOpen = faults.Has(FailureMode.Open, "bottom") || faults.Has(FailureMode.Open);
        deck.Resistor(part.Designator + "t", top, wiper, topOpen ? OpenOhms : ohms * (1 - lower));
        deck.Resistor(part.Designator + "b", wiper, bottom, bottomOpen ? OpenOhms : ohms * lower);
        return true;
    }

    /// <summary>Fraction of the track between bottom and wiper.</summary>
    private static double Below(Taper taper, double rotation) =>
        taper switch
        {
            Taper.Log => LogTaper(rotation),
            Taper.Antilog => 1 - LogTaper(1 - rotation),
            _ => rotation,
        };

    private static double LogTaper(double rotation) => (Math.Pow(81, rotation) - 1) / 80;
}
