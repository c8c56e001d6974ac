using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Power.Offers;

/// <summary>Puts the windings of an offer in the place of those drawn: one for one, or two in series where neither has the volts alone.</summary>
internal static class OfferMatch
{
    private sealed record Candidate(Winding[] Used, double[] Volts, double[] Ohms, double Amps)
    {
        public double Total => Volts.Sum();
    }

    /// <summary>The part as offered, or in a sentence what it lacks.</summary>
    public static (TransformerPart? Part, string? Lacks) Of(TransformerPart drawn, TransformerPart offered, double mains)
    {
        Winding[] primaries = [.. offered.Windings.Where(w => w.IsPrimary)];
        var volts = primaries.Sum(w => w.SectionVolts.Sum());
        var parallel = Math.Abs((volts / primaries.Length / mains) - 1) < Math.Abs((volts / mains) - 1);
        var ratio = parallel ? volts / primaries.Length : volts;
        if (Math.Abs((ratio / mains) - 1) > 0.15)
        {
            return (null, FormattableString.Invariant($"its primary takes {ratio:0} V, the mains here is {mains:0} V"));
        }

        var ohms = primaries.Sum(w => w.SectionOhms.Sum());
        ohms = parallel ? ohms / primaries.Length / primaries.Length : ohms;
        List<Winding> free = [.. offered.Windings.Where(w => !w.IsPrimary)];
        Dictionary<string, Winding> placed = [];
        foreach (var wanted in drawn.Windings.Where(w => !w.IsPrimary).OrderByDescending(w => w.SectionVolts.Sum()))
        {
            if (Best(wanted, free) is not { } best)
            {
                return (null, $"it has no winding for {wanted.Name}{(wanted.SectionVolts.Count > 1 ? " with its taps" : "")}");
            }

            free.RemoveAll(w => Array.IndexOf(best.Used, w) >= 0);
            // More turns on its primary than the mains here asks for leave less on the secondary.
            placed[wanted.Name] = wanted with
            {
                SectionVolts = [.. best.Volts.Select(v => v * mains / ratio)],
                SectionOhms = best.Ohms,
                RatedAmps = best.Amps,
            };
        }

        return (
            drawn with
            {
                Rating = offered.Rating,
                Windings = [.. drawn.Windings.Select(w => w.IsPrimary ? Primary(w, ohms, mains) : placed[w.Name])],
            },
            null
        );
    }

    private static Winding Primary(Winding w, double ohms, double mains)
    {
        var own = w.SectionVolts.Sum();
        return w with { SectionOhms = [.. w.SectionVolts.Select(v => ohms * own / mains * v / own)] };
    }

    private static Candidate? Best(Winding wanted, List<Winding> free)
    {
        var total = wanted.SectionVolts.Sum();
        var sections = wanted.SectionVolts.Count;
        var single = free.Where(w => w.SectionVolts.Count == sections).Select(w => Of([w], sections));
        var pairs =
            from a in free
            from b in free
            where free.IndexOf(a) < free.IndexOf(b) && a.SectionVolts.Count == 1 && b.SectionVolts.Count == 1 && sections <= 2
            select Of([a, b], sections);
        return single.Concat(pairs).MinBy(c => Math.Abs(Math.Log(c.Total / total)) + (c.Used.Length > 1 ? 0.01 : 0));
    }

    private static Candidate Of(Winding[] used, int sections)
    {
        double[] volts = [.. used.SelectMany(w => w.SectionVolts)];
        double[] ohms = [.. used.SelectMany(w => w.SectionOhms)];
        var amps = used.Min(w => w.RatedAmps);
        return volts.Length == sections ? new(used, volts, ohms, amps) : new(used, [volts.Sum()], [ohms.Sum()], amps);
    }
}
