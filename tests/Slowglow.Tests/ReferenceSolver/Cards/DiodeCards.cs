using Slowglow.Circuits;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Diode;

namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Diodes, zeners and LEDs: the solver's own junction, with breakdown as a second junction behind its volts.</summary>
internal sealed class DiodeCards : PartCards
{
    /// <summary>Volts above which a breakdown is out of reach of these circuits, and is left out.</summary>
    private const double FarBreakdown = 100;

    /// <summary>Without a capacitance at all the solver's step control fails at the turn of every rectifier: 10 pF carry nothing here.</summary>
    private const double JunctionFarads = 1e-11;
    private const double ThermalVolts = 0.025852;
    private const double TinyAmps = 1e-14;

    public override bool Write(Deck deck, Part part, FaultsOf faults, Bench bench)
    {
        if (part is not DiodePart diode)
        {
            return false;
        }

        var (a, k) = (deck.Node(part.Pins[0].Net), deck.Node(part.Pins[1].Net));
        (a, k) = faults.Has(FailureMode.Backwards) ? (k, a) : (a, k);
        var leak = faults.Has(FailureMode.Short) ? ShortOhms : faults.Severity(FailureMode.Leaky, OpenOhms);
        deck.Resistor(part.Designator + "leak", a, k, leak);
        if (!faults.Has(FailureMode.Open))
        {
            WriteJunction(deck, diode, a, k);
            if (bench.Run != ReferenceRun.SmallSignal)
            {
                deck.Capacitor(part.Designator + "junction", a, k, JunctionFarads);
            }

            WriteBreakdown(deck, diode, a, k, faults.Severity(FailureMode.Drifted, 1));
        }

        return true;
    }

    private static void WriteJunction(Deck deck, DiodePart part, string a, string k)
    {
        var law = part.Device.Law;
        var ohms = Math.Max(law.GetValueOrDefault("rs"), 1e-3);
        deck.Card($"d{part.Designator} {a} {k} m{part.Designator}");
        deck.Card($".model m{part.Designator} d(is={law["is"]:R} n={law["n"]:R} rs={ohms:R})");
    }

    private static void WriteBreakdown(Deck deck, DiodePart part, string a, string k, double factor)
    {
        var law = part.Device.Law;
        var volts = law.GetValueOrDefault("bv", double.PositiveInfinity) * factor;
        if (part.Device.Kind != DeviceKind.Zener && volts > FarBreakdown)
        {
            return;
        }

        var slope = Math.Max(law.GetValueOrDefault("rz", 1), 1e-2);
        var amps = law.GetValueOrDefault("iz", 1e-5);
        var knee = volts - (slope * amps) - (ThermalVolts * Math.Log(amps / TinyAmps));
        var inner = deck.Inner(part.Designator, "breakdown");
        deck.Card($"dz{part.Designator} {k} {inner} mz{part.Designator}");
        deck.Card($".model mz{part.Designator} d(is={TinyAmps:R} n=1 rs={slope:R})");
        deck.Card($"vz{part.Designator} {inner} {a} dc {knee:R}");
    }
}
