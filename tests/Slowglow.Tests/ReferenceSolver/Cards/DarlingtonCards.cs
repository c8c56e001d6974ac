using Slowglow.Circuits;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Transistor;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Darlingtons: a driver and an output transistor with their resistors from base to emitter.</summary>
internal sealed class DarlingtonCards : PartCards
{
    public override bool Write(Deck deck, Part part, FaultsOf faults, Bench bench)
    {
        if (part is not TransistorPart { Device.Kind: DeviceKind.Darlington } transistor)
        {
            return false;
        }

        var law = transistor.Device;
        var nodes = new[] { "c", "b", "e" }.ToDictionary(e => e, e => deck.Node(part.NetOf(e)!));
        WriteLeaks(deck, part.Designator, nodes, faults, "c-e", "b-e", "b-c");
        var inner = deck.Inner(part.Designator, "inner");
        deck.Guess(inner, v => (v(nodes["b"]) + v(nodes["e"])) / 2);
        var open = faults.All.FirstOrDefault(f => f.Mode == FailureMode.Open)?.Where;
        deck.Resistor(part.Designator + "r1", nodes["b"], inner, open == "b" ? OpenOhms : law["r1"]);
        deck.Resistor(part.Designator + "r2", inner, nodes["e"], open is "b" or "e" ? OpenOhms : law["r2"]);
        if (open is null)
        {
            var gain = law["bf1"] * faults.Severity(FailureMode.Drifted, 1);
            WriteOne(deck, law, part.Designator + "x1", "1", gain, [nodes["c"], nodes["b"], inner]);
            WriteOne(deck, law, part.Designator + "x2", "2", law["bf2"], [nodes["c"], inner, nodes["e"]]);
        }
        else if (open == "c")
        {
            WriteJunction(deck, law, part.Designator + "x1", law["is1"] / law["bf1"], nodes["b"], inner);
            WriteJunction(deck, law, part.Designator + "x2", law["is2"] / law["bf2"], inner, nodes["e"]);
        }
        else if (open == "e")
        {
            WriteJunction(deck, law, part.Designator + "x1", law["is1"] / law["br"], nodes["b"], nodes["c"]);
            WriteJunction(deck, law, part.Designator + "x2", law["is2"] / law["br"], inner, nodes["c"]);
            WriteJunction(deck, law, part.Designator + "x3", law["is1"] / law["bf1"], nodes["b"], inner);
        }
        else
        {
            WriteJunction(deck, law, part.Designator + "x2", law["is2"] / law["br"], inner, nodes["c"]);
        }

        return true;
    }

    private static void WriteOne(Deck deck, Device law, string name, string which, double gain, string[] cbe)
    {
        deck.Card($"q{name} {cbe[0]} {cbe[1]} {cbe[2]} m{name}");
        deck.Card(
            $".model m{name} {(law["polarity"] > 0 ? "npn" : "pnp")}(is={law["is" + which]:R} bf={gain:R} br={law["br"]:R} vaf={law["vaf"]:R})"
        );
    }

    private static void WriteJunction(Deck deck, Device law, string name, double amps, string positive, string negative)
    {
        var (a, k) = law["polarity"] > 0 ? (positive, negative) : (negative, positive);
        deck.Card($"d{name} {a} {k} m{name}");
        deck.Card($".model m{name} d(is={amps:R} n=1)");
    }
}
