using Slowglow.Circuits;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Transistor;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>JFETs and MOSFETs by the library's own square laws; a MOSFET's bulk is tied to its source, so that the drain junction is its body diode.</summary>
internal sealed class FieldEffectCards : PartCards
{
    public override bool Write(Deck deck, Part part, FaultsOf faults, Bench bench)
    {
        if (part is not TransistorPart { Device.Kind: DeviceKind.Jfet or DeviceKind.Mosfet } transistor)
        {
            return false;
        }

        var nodes = new[] { "d", "g", "s" }.ToDictionary(e => e, e => deck.Node(part.NetOf(e)!));
        WriteLeaks(deck, part.Designator, nodes, faults, "d-s", "g-s", "d-g");

        // With any electrode off, nothing of it is left: our solver's own statement.
        if (faults.Has(FailureMode.Open, "d") || faults.Has(FailureMode.Open, "g") || faults.Has(FailureMode.Open, "s"))
        {
            return true;
        }

        var law = transistor.Device;
        var channel = law["polarity"] > 0 ? "n" : "p";
        var factor = faults.Severity(FailureMode.Drifted, 1);
        var (name, d, g, s) = (part.Designator, nodes["d"], nodes["g"], nodes["s"]);
        if (law.Kind == DeviceKind.Jfet)
        {
            deck.Card($"j{name} {d} {g} {s} m{name}");
            deck.Card(
                $".model m{name} {channel}jf(vto={law["vto"]:R} beta={factor * law["beta"]:R} lambda={law["lambda"]:R} is={law["is"]:R})"
            );
        }
        else
        {
            deck.Card($"m{name} {d} {g} {s} {s} m{name} l=100u w=100u");
            deck.Card(
                $".model m{name} {channel}mos(level=1 vto={law["polarity"] * law["vto"]:R} kp={factor * law["kp"]:R} lambda={law["lambda"]:R} gamma=0 is={law["diodeIs"]:R})"
            );
        }

        return true;
    }
}
