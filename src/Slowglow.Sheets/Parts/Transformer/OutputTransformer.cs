using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Transformer;

/// <summary>Output transformers, by impedance (<c>5k:8</c>) or by turns ratio (<c>25:1</c>).</summary>
internal static class OutputTransformer
{
    private const double CopperShare = 0.05;

    /// <summary>Where the reactance of an unsaid primary and of an unsaid leakage inductance equals the load, hertz.</summary>
    private const double LowestHertz = 30;
    private const double HighestHertz = 50e3;
    private const string Practice = "5 % of the impedance on each side, common practice, no source";

    internal static PartPlan? Plan(PartFacts facts, List<WindingPlan> windings, SheetContext context)
    {
        var entry = facts.Entry;
        var watts = facts.Take(Unit.Watt, "watts", "rating");
        var word = facts.TakeText("impedance") ?? facts.TakeText("ratio") ?? TakeRatio(entry);
        facts.TakeWord("ratio", "impedance", "turns");
        facts.TakeWord("single-ended", "push-pull", "se", "pp");
        var match = word is { } said ? ImpedanceMatch.Read(said.Text) : FromWindings(windings);
        if (match is null)
        {
            var text = word is { } wrong
                ? $"'{wrong.Text}' is neither impedances nor a turns ratio"
                : "neither impedances nor a turns ratio";
            context.Findings.Error(
                word?.Place ?? entry.Place,
                $"{entry.Designator}: {text}",
                "write output transformer 5k:8, or 25:1",
                entry.Designator
            );
            return null;
        }

        if (match.IsRatioOnly)
        {
            context.Assume(
                entry.Designator,
                "impedances",
                $"{Engineering.Format(match.Primary, "ohm")} to {Engineering.Format(match.Secondary, "ohm")}",
                "the ratio with an 8 ohm load"
            );
        }

        Complete(facts.Designator, match, windings, context);
        var henries = Reactance(facts, "inductance", match.Primary, LowestHertz, context);
        var leakage = Reactance(facts, "leakage", match.Primary, HighestHertz, context);
        Winding[] finished = [.. windings.Select(w => w.Finish(1))];
        return TransformerKind.Finish(
            facts,
            finished,
            context,
            ends => new TransformerPart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                IsOutput = true,
                Rating = watts.Value,
                PrimaryImpedance = match.Primary,
                PrimaryHenries = henries,
                LeakageHenries = leakage,
                Windings = finished,
                Description = Description.Of("output transformer", word?.Text, Description.Rating(watts.Value, "W")),
            }
        );
    }

    /// <summary>The inductance under a key, seen from the whole primary, or that whose reactance equals the load at a frequency.</summary>
    private static double Reactance(PartFacts facts, string key, double load, double hertz, SheetContext context)
    {
        var given = facts.TakeKeyed(Unit.Henry, key);
        if (given.IsGiven && given.Value > 0)
        {
            return given.Value;
        }

        var henries = load / (2 * Math.PI * hertz);
        context.Assume(
            facts.Designator,
            $"{key} seen from the primary",
            Engineering.Format(henries, "H", 2),
            $"its reactance equals the load at {Engineering.Format(hertz, "Hz")}, common practice, no source"
        );
        return henries;
    }

    private static Word? TakeRatio(PartEntry entry)
    {
        var at = entry.Words.FindIndex(w => w.Text.Contains(':', StringComparison.Ordinal));
        if (at < 0)
        {
            return null;
        }

        var word = entry.Words[at];
        entry.Words.RemoveAt(at);
        return word;
    }

    private static ImpedanceMatch? FromWindings(List<WindingPlan> windings)
    {
        if (windings.Exists(w => w.IsShapeOnly))
        {
            return null;
        }

        var primary = windings.Where(w => w.IsPrimary).Sum(w => w.Volts);
        var secondary = windings.Where(w => !w.IsPrimary).Select(w => w.Volts).DefaultIfEmpty().Max();
        return primary > 0 && secondary > 0 ? ImpedanceMatch.OfRatio(primary / secondary) : null;
    }

    private static void Complete(string designator, ImpedanceMatch match, List<WindingPlan> windings, SheetContext context)
    {
        if (windings.Count == 0)
        {
            windings.Add(
                new WindingPlan
                {
                    Name = "P",
                    Place = Place.None,
                    IsPrimary = true,
                    Pins = ["1", "2"],
                }
            );
            windings.Add(
                new WindingPlan
                {
                    Name = "S",
                    Place = Place.None,
                    IsPrimary = false,
                    Pins = ["3", "4"],
                }
            );
        }

        // Turns said on some windings only cannot be weighed against impedances: the match then rules all of them.
        var said = windings.TrueForAll(w => w.Sections.Count > 0 && !w.IsShapeOnly);
        var primaries = windings.Count(w => w.IsPrimary);
        foreach (var winding in windings)
        {
            var impedance = winding.IsPrimary ? match.Primary : match.Secondary;
            var turns = Math.Sqrt(impedance) / (winding.IsPrimary ? primaries : 1);
            if (!said)
            {
                winding.Sections = Shaped(winding, turns);
            }

            if (double.IsNaN(winding.Ohms))
            {
                winding.Ohms = CopperShare * impedance / (winding.IsPrimary ? primaries : 1);
                context.Assume(
                    designator,
                    $"resistance of winding {winding.Name}",
                    Engineering.Format(winding.Ohms, "ohm"),
                    Practice
                );
            }
        }
    }

    // Taps keep their proportions; untold ones split evenly (a centre tap).
    private static IReadOnlyList<double> Shaped(WindingPlan winding, double turns)
    {
        var sections = winding.Pins.Count - 1;
        var shape = winding.Sections.Count == sections ? winding.Sections : [.. Enumerable.Repeat(1.0, sections)];
        return [.. shape.Select(s => turns * s / shape.Sum())];
    }
}
