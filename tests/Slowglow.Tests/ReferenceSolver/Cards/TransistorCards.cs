using Slowglow.Circuits;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Transistor;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Bipolar transistors in transport form with the Early voltage.</summary>
internal sealed class TransistorCards : PartCards
{
    public override bool Write(Deck deck, Part part, FaultsOf faults, Bench bench)
    {
        if (part is not TransistorPart { Device.Kind: DeviceKind.Bjt } transistor)
        {
            return false;
        }

        var nodes = new[] { "c", "b", "e" }.ToDictionary(e => e, e => deck.Node(part.NetOf(e)!));
        WriteLeaks(deck, part.Designator, nodes, faults, "c-e", "b-e", "b-c");

        var open = faults.All.FirstOrDefault(f => f.Mode == FailureMode.Open)?.Where;
        if (open is null)
        {
            WriteWhole(deck, transistor, nodes, faults);
        }
        else
        {
            WriteRest(deck, transistor, nodes, open);
        }

        return true;
    }

    private static void WriteWhole(Deck deck, TransistorPart part, Dictionary<string, string> nodes, FaultsOf faults)
    {
        var law = part.Device;
        var gain = law["bf"] * faults.Severity(FailureMode.Drifted, 1);
        var type = law["polarity"] > 0 ? "npn" : "pnp";
        if (faults.Has(FailureMode.Backwards))
        {
            // Without the Early effect: our solver's own statement.
            deck.Card($"q{part.Designator} {nodes["e"]} {nodes["b"]} {nodes["c"]} m{part.Designator}");
            deck.Card($".model m{part.Designator} {type}(is={law["is"]:R} bf={gain:R} br={law["br"]:R} vaf=1e9)");
            return;
        }

        deck.Card($"q{part.Designator} {nodes["c"]} {nodes["b"]} {nodes["e"]} m{part.Designator}");
        deck.Card($".model m{part.Designator} {type}(is={law["is"]:R} bf={gain:R} br={law["br"]:R} vaf={law["vaf"]:R})");
    }

    /// <summary>With one electrode off, the junction between the other two is all that is left: our solver's own statement.</summary>
    private static void WriteRest(Deck deck, TransistorPart part, Dictionary<string, string> nodes, string open)
    {
        if (open == "b")
        {
            return;
        }

        var law = part.Device;
        var other = nodes[open == "c" ? "e" : "c"];
        var amps = law["is"] / law[open == "c" ? "bf" : "br"];
        var (a, k) = law["polarity"] > 0 ? (nodes["b"], other) : (other, nodes["b"]);
        deck.Card($"d{part.Designator} {a} {k} m{part.Designator}");
        deck.Card($".model m{part.Designator} d(is={amps:R} n=1)");
    }
}
