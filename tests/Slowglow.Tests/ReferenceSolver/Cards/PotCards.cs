using Slowglow.Circuits;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Pot;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Pots and trimmers: two resistances and a wiper.</summary>
internal sealed class PotCards : PartCards
{
    private const double WiperOhms = 1;

    public override bool Write(Deck deck, Part part, FaultsOf faults, Bench bench)
    {
        if (part is not PotPart pot)
        {
            return false;
        }

        var below = Below(pot.Taper, bench.Rotation(pot));
        var (upper, lower) = ((pot.Ohms * (1 - below)) + WiperOhms, (pot.Ohms * below) + WiperOhms);
        var drift = faults.Severity(FailureMode.Drifted, 1);
        var (top, wiper, bottom) = (deck.Node(pot.Pins[0].Net), deck.Node(pot.Pins[1].Net), deck.Node(pot.Pins[2].Net));
        var wiperOff = faults.Has(FailureMode.Open, "wiper");
        var topOff = wiperOff || faults.Has(FailureMode.Open, "top") || faults.Has(FailureMode.Open);
        var bottomOff = wiperOff || faults.Has(FailureMode.Open, "bottom") || faults.Has(FailureMode.Open);
        if (faults.Has(FailureMode.BadContact, "wiper"))
        {
            var track = deck.Inner(part.Designator, "track");
            deck.Resistor(part.Designator + "w", track, wiper, faults.Severity(FailureMode.BadContact, 0, "wiper"));
            wiper = track;
        }

        deck.Resistor(part.Designator + "t", top, wiper, topOff ? OpenOhms : upper * drift);
        deck.Resistor(part.Designator + "b", wiper, bottom, bottomOff ? OpenOhms : lower * drift);
        deck.Resistor(part.Designator + "a", top, bottom, wiperOff ? upper + lower : OpenOhms);
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

    /// <summary>15 % at half rotation, in two straight pieces.</summary>
    private static double LogTaper(double rotation) => rotation < 0.5 ? 0.3 * rotation : 0.15 + (1.7 * (rotation - 0.5));
}
