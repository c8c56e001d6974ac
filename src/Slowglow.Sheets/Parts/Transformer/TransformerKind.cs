using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;
using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Parts.Transformer;

/// <summary>Reads mains and output transformers, long form.</summary>
internal sealed class TransformerKind : PartKind
{
    internal override string Name => "transformer";
    internal override IReadOnlyList<string> Words => ["transformer", "output"];
    internal override IReadOnlyList<string> Letters => ["T", "TX", "OT", "PT", "MT", "OPT"];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        var output = facts.TakeWord("output") is not null;
        facts.TakeWord("transformer");
        facts.TakeWord("mains", "power");
        var windings = Windings(entry, output, context.Findings);
        if (windings is null)
        {
            return null;
        }

        if (output)
        {
            return OutputTransformer.Plan(facts, windings, context);
        }

        var rating = facts.Take(Unit.VoltAmpere, "va", "rating");
        rating = rating.IsGiven ? rating : facts.Take(Unit.Watt, "watts");
        if (windings.Count < 2)
        {
            context.Findings.Error(
                entry.Place,
                $"{entry.Designator} needs a primary and a secondary under windings",
                "write windings: with pins, volts, amps, ohms of each",
                entry.Designator
            );
            return null;
        }

        Regulation.EstimateOhms(entry.Designator, rating.Value, windings, context);
        Winding[] finished = [.. windings.Select(w => w.Finish(Regulation.Raise(entry.Designator, w, windings, context)))];
        return Finish(
            facts,
            finished,
            context,
            ends => new TransformerPart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                Rating = rating.Value,
                Windings = finished,
                Description = Description.Of("transformer", Description.Rating(rating.Value, "VA")),
            }
        );
    }

    internal static PartPlan Finish(
        PartFacts facts,
        Winding[] windings,
        SheetContext context,
        Func<IReadOnlyList<Pin>, Part> build
    )
    {
        List<PinPlan> pins = [.. windings.SelectMany(w => w.Pins).Select(p => new PinPlan(p))];
        Pins.Tie(pins, facts, context);
        facts.ReportRest();
        return new PartPlan(facts.Entry, pins, build);
    }

    /// <summary>Null after an error that leaves no transformer.</summary>
    private static List<WindingPlan>? Windings(PartEntry entry, bool output, FindingList findings)
    {
        entry.KnownKeys.Add("windings");
        if (!entry.Keys.Remove("windings", out var found))
        {
            if (output)
            {
                return [];
            }

            findings.Error(
                entry.Place,
                $"{entry.Designator} has no windings",
                "write windings: with pins, volts, amps, ohms of each",
                entry.Designator
            );
            return null;
        }

        if (found.Value is not YamlMap map)
        {
            findings.Error(
                found.Value.Place,
                $"{entry.Designator}: 'windings' holds {found.Value.Kind}",
                "write P: { pins: 1-2, volts: 230 V } and so on",
                entry.Designator
            );
            return null;
        }

        var windings = new WindingReader(entry.Designator, output, findings).Read(map);
        return windings.Count == map.Entries.Count ? windings : null;
    }
}
