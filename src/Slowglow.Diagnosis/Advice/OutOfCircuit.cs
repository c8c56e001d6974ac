using Slowglow.Circuits;
using Slowglow.Quantities;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Contact;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Inductor;
using Slowglow.Sheets.Parts.Lamp;
using Slowglow.Sheets.Parts.OpAmp;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Parts.Wire;

namespace Slowglow.Diagnosis.Advice;

/// <summary>
/// What a good part and the suspected one would show out of circuit, from the value on the sheet and the fault. Minutes to replace are common
/// practice, no source.
/// </summary>
internal static class OutOfCircuit
{
    public static string Say(Part part, Fault fault)
    {
        if (part is ValvePart && LiftsItsGrid(fault))
        {
            return $"Prove it before ordering: pull {part.Designator} and read the DC at its grid again. If the volts are gone it was {part.Designator}; "
                + "if they stay they come through what couples to that grid.";
        }
        if (fault.Mode is FailureMode.StuckHigh or FailureMode.StuckLow && part is OpAmpPart)
        {
            var rail = fault.Mode == FailureMode.StuckHigh ? "positive" : "negative";
            return $"Prove it where it stands: read the DC at the output of {$"{part.Designator} {fault.Where}".TrimEnd()}; a good one shows what its inputs ask for, this one would stay within "
                + $"a volt or two of its {rail} supply with its inputs joined. Then put a known good one in.";
        }
        var (how, good, bad) = Check(part, fault);
        return how.Length == 0
            ? $"Prove it before ordering: no meter proves {part.Designator} out of circuit; put a known good one in."
            : $"Prove it out of circuit: {how}; a good one shows {good}, this one would show {bad}.";
    }

    /// <summary>What to do, what a good part and the suspected one would show; all empty where no meter tells.</summary>
    public static (string How, string Good, string Bad) Check(Part part, Fault fault) =>
        part switch
        {
            ResistorPart r => (Lift(part), Band(r.Ohms, r.Tolerance, "ohm"), OfValue(fault, r.Ohms, "ohm")),
            CapacitorPart c => OfCapacitor(c, fault),
            DiodePart => (Lift(part), "0.4 V to 0.8 V one way and overload the other on the diode test", OfJunction(fault)),
            TransistorPart => OfTransistor(part, fault),
            ValvePart => OfValve(part, fault),
            TransformerPart t => OfWinding(t, fault),
            InductorPart l => (
                Lift(part),
                "about " + Engineering.Format(l.CopperOhms, "ohm", 2),
                OfValue(fault, l.CopperOhms, "ohm")
            ),
            FusePart or WirePart or ContactPart or LampPart => (
                $"take {part.Designator} out or free one end",
                "next to 0 ohm",
                Bad(fault)
            ),
            _ => ("", "", ""),
        };

    /// <summary>Minutes from here to a new part fitted.</summary>
    public static double MinutesToReplace(Part part) =>
        part switch
        {
            ValvePart or LampPart => 2,
            FusePart => 1,
            ResistorPart or CapacitorPart or DiodePart or WirePart => 10,
            TransistorPart => 15,
            TransformerPart => 90,
            _ => 20,
        };

    private static string Lift(Part part) => $"lift one leg of {part.Designator}";

    private static string Band(double value, double tolerance, string unit) =>
        $"{Engineering.Format(value * (1 - tolerance), unit)} to {Engineering.Format(value * (1 + tolerance), unit)}";

    private static string Bad(Fault fault) =>
        fault.Mode switch
        {
            FailureMode.Open or FailureMode.Dead => "overload",
            FailureMode.Short => "next to 0 ohm",
            FailureMode.Leaky or FailureMode.BadContact => "about " + Engineering.Format(fault.Severity, "ohm", 2),
            _ => "something else",
        };

    private static string OfValue(Fault fault, double value, string unit) =>
        fault.Mode is FailureMode.Drifted or FailureMode.WrongValue
            ? "about " + Engineering.Format(value * fault.Severity, unit, 2)
            : Bad(fault);

    private static (string, string, string) OfCapacitor(CapacitorPart c, Fault fault)
    {
        var farads = Engineering.Format(c.Farads, "F");
        return fault.Mode switch
        {
            FailureMode.Short or FailureMode.Leaky => (
                Lift(c) + " and measure ohms, leaky ones at working volts",
                c.Style == CapacitorStyle.Electrolytic ? "ohms that climb past 1 Mohm" : "overload",
                Bad(fault)
            ),
            FailureMode.DriedOut => (
                Lift(c) + " and measure the capacitance",
                $"about {farads}",
                $"about {Engineering.Format(c.Farads * fault.Severity, "F", 2)}, with a high series resistance"
            ),
            FailureMode.Backwards => (
                $"look at the plus sign on {c.Designator}",
                "it where the drawing has it",
                "it at the other end"
            ),
            FailureMode.Drifted or FailureMode.WrongValue => (
                Lift(c) + " and measure the capacitance",
                $"about {farads}",
                OfValue(fault, c.Farads, "F")
            ),
            _ => (Lift(c) + " and measure the capacitance", $"about {farads}", "next to none"),
        };
    }

    private static string OfJunction(Fault fault) =>
        fault.Mode switch
        {
            FailureMode.Open => "overload both ways",
            FailureMode.Short => "next to 0 V both ways",
            FailureMode.Leaky => $"a reading both ways (about {Engineering.Format(fault.Severity, "ohm", 2)} on ohms)",
            FailureMode.Backwards => "the same with its ends changed over",
            _ => "something else",
        };

    private static (string, string, string) OfTransistor(Part part, Fault fault) =>
        fault.Where.Contains("c-e", StringComparison.Ordinal) || fault.Where.Contains("d-s", StringComparison.Ordinal)
            ? ($"take {part.Designator} out and measure ohms {fault.Where}", "overload or megohms", Bad(fault))
            : (
                $"take {part.Designator} out and use the diode test{(fault.Where.Length > 0 ? " at " + fault.Where : "")}",
                "0.5 V to 0.8 V one way and overload the other",
                OfJunction(fault)
            );

    /// <summary>Gas and a leak from anode to grid look like a leaking coupling capacitor until the valve is out.</summary>
    private static bool LiftsItsGrid(Fault fault) =>
        fault.Mode == FailureMode.Gassy
        || (fault.Mode == FailureMode.Leaky && fault.Where.EndsWith("a-g", StringComparison.Ordinal));

    private static (string, string, string) OfValve(Part part, Fault fault) =>
        fault switch
        {
            { Where: "heater", Mode: FailureMode.Open } => (
                $"pull {part.Designator} and measure its heater",
                "a few ohms cold",
                "overload"
            ),
            { Mode: FailureMode.Short } => (
                $"pull {part.Designator} and measure ohms {fault.Where}",
                "overload",
                "next to 0 ohm"
            ),
            _ => ("", "", ""),
        };

    private static (string, string, string) OfWinding(TransformerPart t, Fault fault)
    {
        var winding = t.Windings.FirstOrDefault(w => w.Name == fault.Where);
        if (fault.Where.Contains(" to ", StringComparison.Ordinal))
        {
            return ($"free all ends of {t.Designator} and measure ohms from {fault.Where}", "overload", Bad(fault));
        }

        return winding is null || fault.Mode is not (FailureMode.Open or FailureMode.Short)
            ? ("", "", "")
            : (
                $"free the ends of {t.Designator}.{winding.Name}",
                "about " + Engineering.Format(winding.SectionOhms.Sum(), "ohm", 2),
                Bad(fault)
            );
    }
}
