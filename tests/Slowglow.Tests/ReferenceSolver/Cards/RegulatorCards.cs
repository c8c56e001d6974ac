using Slowglow.Circuits;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Regulator;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Three-terminal regulators with dropout and current limit.</summary>
internal sealed class RegulatorCards : PartCards
{
    public override bool Write(Deck deck, Part part, FaultsOf faults, Bench bench)
    {
        if (part is not RegulatorPart regulator)
        {
            return false;
        }

        var law = regulator.Device;
        var sign = law["polarity"];
        var input = deck.Node(part.NetOf("in")!);
        var output = deck.Node(part.NetOf("out")!);
        var ground = deck.Node(part.NetOf("gnd") ?? part.NetOf("adj")!);
        if (faults.Has(FailureMode.StuckHigh) || faults.Has(FailureMode.Short))
        {
            deck.Resistor(part.Designator, input, output, ShortOhms);
            return true;
        }

        if (faults.Has(FailureMode.Open))
        {
            return true;
        }

        var volts = law["volts"] * faults.Severity(FailureMode.Drifted, 1);
        var room = FormattableString.Invariant($"{sign:R}*v({input},{ground})-{law["dropout"]:R}");
        var wanted = FormattableString.Invariant($"min({volts:R},max({room},0))");
        var error = FormattableString.Invariant($"({wanted}-{sign:R}*v({output},{ground}))/{law["rout"]:R}");
        var amps = FormattableString.Invariant($"{sign:R}*{law["limit"]:R}*tanh(max({error},0)/{law["limit"]:R})");
        deck.Current(part.Designator + "o", input, output, amps);
        deck.Current(part.Designator + "q", input, ground, FormattableString.Invariant($"{sign * law["iq"]:R}"));
        return true;
    }
}
