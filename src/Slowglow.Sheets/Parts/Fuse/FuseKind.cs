using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Fuse;

/// <summary>Reads fuses: <c>F1: fuse 500mA A -> B</c>.</summary>
internal sealed class FuseKind : PartKind
{
    internal override string Name => "fuse";
    internal override IReadOnlyList<string> Words => ["fuse"];
    internal override IReadOnlyList<string> Letters => ["F", "FS"];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        var pins = Pins.Two(facts, context);
        Markings(entry);
        facts.TakeWord("fuse");
        var speed = facts.TakeWord(
            "slow",
            "antisurge",
            "anti-surge",
            "slow-blow",
            "time-lag",
            "T",
            "fast",
            "quick",
            "F",
            "FF",
            "TT"
        );
        facts.TakeWord("blow", "lag");
        var ohms = facts.Take(Unit.Ohm, "ohms");
        var volts = facts.Take(Unit.Volt, "volts");
        var amps = facts.TakeValue(Unit.Ampere, "amps", "value");
        if (!facts.Require(amps, "rating in amperes", "500mA", 100))
        {
            return null;
        }

        var cold = ohms.Value > 0 ? ohms.Value : Estimated(amps.Value, facts, context);
        facts.ReportRest();
        return new PartPlan(
            entry,
            pins,
            ends => new FusePart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                RatedAmps = amps.Value,
                Ohms = cold,
                Speed = SpeedOf(speed),
                RatedVolts = volts.Value,
                Description = Description.Of("fuse", Engineering.Format(amps.Value, "A"), speed),
            }
        );
    }

    private static FuseSpeed SpeedOf(string? word) =>
        word?.ToUpperInvariant() switch
        {
            null => FuseSpeed.Unsaid,
            "FAST" or "QUICK" or "F" or "FF" => FuseSpeed.Quick,
            _ => FuseSpeed.TimeLag,
        };

    // As stamped on the cap: T500mA, F1A, 500mAT.
    private static void Markings(PartEntry entry)
    {
        for (var i = 0; i < entry.Words.Count; i++)
        {
            var text = entry.Words[i].Text;
            var lead = text.Length > 1 && text[0] is 'T' or 'F' && char.IsAsciiDigit(text[1]);
            var tail = text.Length > 1 && text[^1] is 'T' or 'F' && char.IsAsciiDigit(text[0]);
            var bare =
                lead ? text[1..]
                : tail ? text[..^1]
                : text;
            if ((lead || tail) && QuantityText.TryRead(bare, Unit.Ampere, out _))
            {
                entry.Words[i] = entry.Words[i] with { Text = bare };
                entry.Words.Add(entry.Words[i] with { Text = lead ? text[..1] : text[^1..] });
            }
        }
    }

    // About 0.15 V across a cold fuse at its rated current.
    private static double Estimated(double amps, PartFacts facts, SheetContext context)
    {
        var ohms = 0.15 / amps;
        context.Assume(
            facts.Designator,
            "cold resistance",
            Engineering.Format(ohms, "ohm", 2),
            "0.15 V at rated current, common practice, no source"
        );
        return ohms;
    }
}
