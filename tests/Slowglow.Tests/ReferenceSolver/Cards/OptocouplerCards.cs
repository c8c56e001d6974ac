using Slowglow.Circuits;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Optocoupler;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>An LED whose current, through a source of no volts, sets the siemens of a resistance.</summary>
internal sealed class OptocouplerCards : PartCards
{
    private const double LeastAmps = 1e-7;

    public override bool Write(Deck deck, Part part, FaultsOf faults, Bench bench)
    {
        if (part is not OptocouplerPart optocoupler)
        {
            return false;
        }

        var law = optocoupler.Device;
        var name = part.Designator;
        string Node(string electrode) => deck.Node(part.NetOf(electrode)!);
        var (a, k, one, other, sensed) = (Node("a"), Node("k"), Node("ra"), Node("rb"), deck.Inner(name, "led"));
        deck.Guess(sensed, v => v(a));
        deck.Resistor(name + "ak", a, k, faults.Has(FailureMode.Short, "a-k") ? ShortOhms : OpenOhms);
        deck.Resistor(name + "ab", one, other, faults.Has(FailureMode.Short, "ra-rb") ? ShortOhms : OpenOhms);
        var (working, lit) = (!faults.Has(FailureMode.Open, "a-k"), !faults.Has(FailureMode.Open, "ra-rb"));
        deck.Card($"vled{name} {a} {sensed} dc 0");
        if (working)
        {
            deck.Card($"d{name} {sensed} {k} m{name}");
            deck.Card($".model m{name} d(is={law["is"]:R} n={law["n"]:R} rs={Math.Max(law["rs"], 1e-3):R})");
        }

        if (lit)
        {
            var ohms = law["ohms"] * faults.Severity(FailureMode.Drifted, 1);
            var share = FormattableString.Invariant(
                $"pow((max(i(vled{name}),0)+{LeastAmps:R})/{law["amps"]:R},{law["gamma"]:R})"
            );
            deck.Current(
                name,
                one,
                other,
                FormattableString.Invariant($"v({one},{other})*({1 / law["dark"]:R}+{share}/{ohms:R})")
            );
        }

        return true;
    }
}
