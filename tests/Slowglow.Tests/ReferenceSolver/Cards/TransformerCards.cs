using Slowglow.Circuits;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>
/// Transformers: each section between neighbouring pins is its copper in series with an ideal winding; all windings share a core node
/// whose volts are those of the whole first winding, held up by the magnetising inductance alone.
/// </summary>
internal sealed class TransformerCards : PartCards
{
    public const string Core = "core";
    private const double LeastOhms = 1e-4;
    public const double MagnetisingOhms = 0.01;

    /// <summary>In series with the magnetising path where the mains is frozen: it would be a short.</summary>
    private const double StillOhms = 1e9;

    public override bool Write(Deck deck, Part part, FaultsOf faults, Bench bench)
    {
        if (part is not TransformerPart transformer)
        {
            return false;
        }

        var reference = transformer.Windings[0].SectionVolts.Sum();
        var core = deck.Inner(part.Designator, Core);
        var still = bench.Run == ReferenceRun.Crest && !transformer.IsOutput;
        GuessCore(deck, transformer, core, still);
        foreach (var winding in transformer.Windings)
        {
            WriteWinding(deck, transformer, winding, core, reference, faults);
        }

        var flow = deck.Inner(part.Designator, "flow");
        deck.Resistor(part.Designator + "iron", core, flow, still ? StillOhms : MagnetisingOhms);
        deck.Coil(part.Designator + "iron", flow, "0", Magnetising.Henries(transformer, bench.Sheet.Mains));
        deck.Resistor(part.Designator + "turns", core, "0", ShortedTurns(transformer, faults, reference));
        WriteBreakthrough(deck, transformer, faults);
        return true;
    }

    /// <summary>From the start of a winding, or its finish where the start is at chassis, to the core or to the next winding's.</summary>
    private static void WriteBreakthrough(Deck deck, TransformerPart part, FaultsOf faults)
    {
        foreach (var fault in faults.All.Where(f => f.Where.Contains(" to ", StringComparison.Ordinal)))
        {
            var ends = fault.Where.Split(" to ");
            var nodes = ends.Select(e => e == "core" ? "0" : LiveNode(deck, part, e)).ToArray();
            var ohms = fault.Mode == FailureMode.Short ? ShortOhms : fault.Severity;
            deck.Resistor(part.Designator + "through", nodes[0], nodes[1], ohms);
        }
    }

    private static string LiveNode(Deck deck, TransformerPart part, string winding)
    {
        var pins = part.Windings.First(w => w.Name == winding).Pins;
        var nodes = pins.Select(p => deck.Node(part.Pins.First(q => q.Number == p).Net)).ToArray();
        return nodes[0] == "0" ? nodes[^1] : nodes[0];
    }

    /// <summary>At rest a core has no volts, unless it is frozen at the crest: then they are those of the first winding, but for its copper.</summary>
    private static void GuessCore(Deck deck, TransformerPart part, string core, bool still)
    {
        var first = part.Windings[0].Pins;
        var (from, to) = (deck.Node(part.NetOf(first[0])!), deck.Node(part.NetOf(first[^1])!));
        deck.Guess(core, v => still ? v(from) - v(to) : 0);
    }

    /// <summary>Ohms across the core that a tenth of a winding's turns make when they are shorted within themselves.</summary>
    private static double ShortedTurns(TransformerPart part, FaultsOf faults, double reference)
    {
        var winding = part.Windings.FirstOrDefault(w => faults.Has(FailureMode.Short, w == part.Windings[0] ? "" : w.Name));
        if (winding is null)
        {
            return OpenOhms;
        }

        var turns = winding.SectionVolts.Sum() / reference;
        return 10 * winding.SectionOhms.Sum(o => Math.Max(o, LeastOhms)) / (turns * turns);
    }

    /// <summary>Name of the magnetising inductance as the deck lists it.</summary>
    public static string CoilOf(TransformerPart part) => "l" + part.Designator.ToLowerInvariant() + "iron";

    /// <summary>Name of the source whose branch carries a section's current.</summary>
    public static string SectionOf(TransformerPart part, Winding winding, int section) =>
        FormattableString.Invariant($"e{part.Designator}{winding.Name}{section}").ToLowerInvariant();

    private static double Leakage(TransformerPart part, Winding winding, int section)
    {
        var primary = part.Windings.Where(w => w.IsPrimary).Sum(w => w.SectionVolts.Sum());
        return part.LeakageHenries * winding.SectionVolts[section] * winding.SectionVolts.Sum() / (primary * primary);
    }

    private static void WriteWinding(
        Deck deck,
        TransformerPart part,
        Winding winding,
        string core,
        double reference,
        FaultsOf faults
    )
    {
        string PinNode(int i) => deck.Node(part.Pins.First(p => p.Number == winding.Pins[i]).Net);
        for (var i = 0; i < winding.SectionVolts.Count; i++)
        {
            var name = FormattableString.Invariant($"{part.Designator}{winding.Name}{i}");
            var inner = deck.Inner(name, "emf");
            var open =
                faults.Has(FailureMode.Open, winding.Name)
                || faults.Has(FailureMode.Open)
                || faults.Has(FailureMode.Open, "pin " + winding.Pins[i])
                || faults.Has(FailureMode.Open, "pin " + winding.Pins[i + 1]);
            var turns = winding.SectionVolts[i] / reference;
            var end = PinNode(i + 1);
            deck.Guess(inner, v => v(end) + (turns * v(core)));
            deck.Resistor(name, PinNode(i), inner, open ? OpenOhms : Math.Max(winding.SectionOhms[i], LeastOhms));
            if (part.IsOutput && !winding.IsPrimary)
            {
                var leaky = deck.Inner(name, "leakage");
                deck.Coil(name + "leakage", inner, leaky, Leakage(part, winding, i));
                deck.Guess(leaky, v => v(end) + (turns * v(core)));
                inner = leaky;
            }

            deck.Card($"e{name} {inner} {end} {core} 0 {turns:R}");
            deck.Card($"f{name} 0 {core} e{name} {turns:R}");
        }
    }
}
