using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Pot;

/// <summary>Reads pots and trimmers: <c>VR1: pot 1M log VOLUME top=A wiper=B bottom=C</c>.</summary>
internal sealed class PotKind : PartKind
{
    internal override string Name => "pot";
    internal override IReadOnlyList<string> Words =>
        ["pot", "potentiometer", "trimmer", "trimpot", "preset", "rheostat", "attenuator"];
    internal override IReadOnlyList<string> Letters => ["VR", "RV", "P", "TR", "RP", "POT", "TP"];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        List<PinPlan> pins = [new("1", "top"), new("2", "wiper"), new("3", "bottom")];
        Pins.Tie(pins, facts, context);
        var word = facts.TakeWord("pot", "potentiometer", "trimmer", "trimpot", "preset", "rheostat", "attenuator");
        var trimmer = word is "trimmer" or "trimpot" or "preset";
        var watts = facts.Take(Unit.Watt, "watts");
        var value = facts.TakeValue(Unit.Ohm, "ohms", "value");
        if (!facts.Require(value, "value in ohms", "pot 1M log", 1e10))
        {
            return null;
        }

        if (!PotSteps.TryTake(facts, context, out var steps))
        {
            return null;
        }

        var taper = double.IsNaN(steps.Decibels) ? TaperOf(facts, trimmer, context) : Taper.Lin;
        var tolerance = facts.Tolerance(0.20, "pots, common practice, no source");
        var control = PotControl.Of(facts, trimmer, context);
        facts.ReportRest();
        return new PartPlan(
            entry,
            pins,
            ends => new PotPart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                Ohms = value.Value,
                Tolerance = tolerance,
                Taper = taper,
                Steps = steps.Count,
                StepDecibels = steps.Decibels,
                ControlName = control.Name,
                IsTrimmer = trimmer,
                Rotation = control.Rotation,
                RatedWatts = watts.Value,
                Description = Description.Of(
                    trimmer ? "trimmer" : "pot",
                    Engineering.Drawing(value.Value),
                    steps.Count > 0 ? $"{steps.Count} steps" : taper.ToString().ToLowerInvariant()
                ),
            }
        );
    }

    private static Taper TaperOf(PartFacts facts, bool trimmer, SheetContext context)
    {
        var said =
            facts.TakeText("taper")?.Text
            ?? facts.TakeWord("lin", "linear", "log", "logarithmic", "audio", "antilog", "anti-log", "revlog");
        switch (said)
        {
            case "log" or "logarithmic" or "audio":
                return Taper.Log;
            case "antilog" or "anti-log" or "revlog":
                return Taper.Antilog;
            case null when !trimmer:
                context.Assume(facts.Designator, "taper", "lin", "none given");
                return Taper.Lin;
            default:
                return Taper.Lin;
        }
    }
}
