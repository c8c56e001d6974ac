using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Inductor;

/// <summary>Reads inductors and chokes: <c>L1: 8H 180ohm A -> B</c>; coils of reverb tanks go by impedance, see <see cref="CoilByImpedance"/>.</summary>
internal sealed class InductorKind : PartKind
{
    internal override string Name => "inductor";
    internal override IReadOnlyList<string> Words => ["inductor", "choke", "coil", "reverb"];
    internal override IReadOnlyList<string> Letters => ["L", "CH", "FB", "RFC"];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        var pins = Pins.Two(facts, context);
        var reverb = facts.TakeWord("reverb") is not null;
        facts.TakeWord("inductor", "choke", "coil");
        if (reverb || entry.Keys.ContainsKey("impedance"))
        {
            return CoilByImpedance.Plan(facts, pins, reverb, context);
        }

        var copper = facts.Take(Unit.Ohm, "ohms", "copper");
        var amps = facts.Take(Unit.Ampere, "amps");
        var value = facts.TakeValue(Unit.Henry, "henries", "value");
        if (!facts.Require(value, "value in henries", "8H or 100m", 10_000))
        {
            return null;
        }

        var ohms = copper.Value > 0 ? copper.Value : Estimated(value.Value, facts, context);
        var tolerance = facts.Tolerance(0.20, "coils, common practice, no source");
        facts.ReportRest();
        return new PartPlan(
            entry,
            pins,
            ends => new InductorPart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                Henries = value.Value,
                CopperOhms = ohms,
                Tolerance = tolerance,
                Description = Description.Of(
                    Engineering.Format(value.Value, "H"),
                    Description.Rating(copper.Value, "ohm"),
                    Description.Rating(amps.Value, "A")
                ),
            }
        );
    }

    // Smoothing chokes of a few henries run at 20 to 40 ohms per henry; small air coils have more copper for their henries.
    private static double Estimated(double henries, PartFacts facts, SheetContext context)
    {
        var ohms = henries >= 0.1 ? 25 * henries : 7.9 * Math.Sqrt(henries);
        context.Assume(
            facts.Designator,
            "copper resistance",
            Engineering.Format(ohms, "ohm"),
            "from its henries, common practice, no source"
        );
        return ohms;
    }
}
