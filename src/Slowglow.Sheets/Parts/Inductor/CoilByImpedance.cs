using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Inductor;

/// <summary>Coils that are known by their impedance at a frequency, those of reverb tanks first: <c>TK1: reverb coil 2250ohm 1kHz 200ohm A -> B</c>.</summary>
internal static class CoilByImpedance
{
    private const double UsualHertz = 1000;

    /// <summary>Share of the impedance that an unsaid copper is.</summary>
    private const double UsualCopper = 0.1;

    /// <summary>The first figure in ohms is the impedance, the second the copper.</summary>
    internal static PartPlan? Plan(PartFacts facts, List<PinPlan> pins, bool reverb, SheetContext context)
    {
        var entry = facts.Entry;
        facts.TakeWord("tank", "input", "output", "coil");
        var impedance = facts.Take(Unit.Ohm, "impedance");
        var given = facts.Take(Unit.Hertz, "frequency");
        if (!facts.Require(impedance, "impedance in ohms", "reverb coil 2250ohm 1kHz 200ohm"))
        {
            return null;
        }

        var hertz = given.Value > 0 ? given.Value : Assumed(facts, "frequency of the impedance", UsualHertz, "Hz", context);
        var said = facts.Take(Unit.Ohm, "ohms", "copper");
        if (said.Value >= impedance.Value)
        {
            context.Findings.Error(
                said.Word.Place,
                $"{entry.Designator}: its copper of {said.Word.Text} leaves nothing of its impedance of {impedance.Word.Text}",
                "write the impedance first, then the copper: reverb coil 2250ohm 1kHz 200ohm",
                entry.Designator
            );
            return null;
        }

        var copper =
            said.Value > 0 ? said.Value : Assumed(facts, "copper resistance", UsualCopper * impedance.Value, "ohm", context);
        var tolerance = facts.Tolerance(0.20, "coils, common practice, no source");
        facts.ReportRest();
        var reactance = Math.Sqrt((impedance.Value * impedance.Value) - (copper * copper));
        var what = reverb ? "reverb coil" : "coil";
        return new PartPlan(
            entry,
            pins,
            ends => new InductorPart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                Henries = reactance / (2 * Math.PI * hertz),
                CopperOhms = copper,
                Tolerance = tolerance,
                Description = $"{what} {Engineering.Format(impedance.Value, "ohm")} at {Engineering.Format(hertz, "Hz")}",
            }
        );
    }

    private static double Assumed(PartFacts facts, string what, double figure, string unit, SheetContext context)
    {
        context.Assume(facts.Designator, what, Engineering.Format(figure, unit), "none given, common practice, no source");
        return figure;
    }
}
