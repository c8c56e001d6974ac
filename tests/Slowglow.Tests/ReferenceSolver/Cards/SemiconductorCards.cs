using Slowglow.Circuits;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.Transistor;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Diodes, zeners, LEDs and bipolar transistors.</summary>
internal sealed class SemiconductorCards : PartCards
{
    public override bool Write(Deck deck, Part part, FaultsOf faults, Bench bench)
    {
        switch (part)
        {
            case DiodePart diode:
                WriteDiode(deck, diode, faults);
                return true;
            case TransistorPart { Device.Kind: DeviceKind.Bjt } transistor:
                WriteTransistor(deck, transistor, faults);
                return true;
            default:
                return false;
        }
    }

    private static void WriteDiode(Deck deck, DiodePart part, FaultsOf faults)
    {
        var (a, k) = (deck.Node(part.Pins[0].Net), deck.Node(part.Pins[1].Net));
        var law = part.Device;
        if (faults.Has(FailureMode.Short))
        {
            deck.Resistor(part.Designator + "short", a, k, ShortOhms);
        }

        if (faults.Severity(FailureMode.Leaky, 0) is > 0 and var leak)
        {
            deck.Resistor(part.Designator + "leak", a, k, leak);
        }

        if (faults.Has(FailureMode.Open) || faults.Has(FailureMode.Short))
        {
            return;
        }

        var breakdown = law.Kind == DeviceKind.Zener ? FormattableString.Invariant($" ibv={law["iz"]:R}") : "";
        deck.Card($"d{part.Designator} {a} {k} m{part.Designator}");
        deck.Card($".model m{part.Designator} d(is={law["is"]:R} n={law["n"]:R} rs={law["rs"]:R} bv={law["bv"]:R}{breakdown})");
    }

    private static void WriteTransistor(Deck deck, TransistorPart part, FaultsOf faults)
    {
        var law = part.Device;
        string Pin(string electrode) => deck.Node(part.NetOf(electrode)!);
        var nodes = new Dictionary<string, string> { ["c"] = Pin("c"), ["b"] = Pin("b"), ["e"] = Pin("e") };
        foreach (var fault in faults.All.Where(f => f.Mode is FailureMode.Short or FailureMode.Leaky))
        {
            var ends = fault.Where.Split('-');
            var ohms = fault.Mode == FailureMode.Short ? ShortOhms : fault.Severity;
            deck.Resistor($"{part.Designator}{ends[0]}{ends[1]}", nodes[ends[0]], nodes[ends[1]], ohms);
        }

        if (faults.Has(FailureMode.Open))
        {
            return;
        }

        foreach (var fault in faults.All.Where(f => f.Mode == FailureMode.Open))
        {
            var inner = deck.Inner(part.Designator, fault.Where);
            deck.Resistor(part.Designator + "open", nodes[fault.Where], inner, OpenOhms);
            nodes[fault.Where] = inner;
        }

        var gain = law["bf"] * faults.Severity(FailureMode.Drifted, 1);
        var type = law["polarity"] > 0 ? "npn" : "pnp";
        deck.Card($"q{part.Designator} {nodes["c"]} {nodes["b"]} {nodes["e"]} m{part.Designator}");
        deck.Card($".model m{part.Designator} {type}(is={law["is"]:R} bf={gain:R} br={law["br"]:R} vaf={law["vaf"]:R})");
    }
}
