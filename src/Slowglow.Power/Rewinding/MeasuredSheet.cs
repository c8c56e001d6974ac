using Slowglow.Quantities;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Power.Rewinding;

/// <summary>Brings what was measured into the sheet's transformer, and says where measurements contradict each other or the drawing.</summary>
internal static class MeasuredSheet
{
    /// <summary>Beyond this a figure is of another transformer, or a slip (common practice, no source).</summary>
    private const double Impossible = 3;
    private const double Doubtful = 1.15;

    public static Parsed<TransformerPart> Apply(TransformerPart part, MeasuredTransformer measured, double mainsHertz)
    {
        List<Finding> findings = [];
        var volts = part.Windings.ToDictionary(w => w.Name, w => w.SectionVolts.Sum());
        var drawn = new Dictionary<string, double>(volts);
        Ratios(part, measured, volts, drawn, findings);
        Turns(part, measured, drawn, findings);
        Flux(part, measured, mainsHertz, findings);
        if (findings.Exists(f => f.Severity == Severity.Error))
        {
            return new(null, findings);
        }

        Winding[] windings = [.. part.Windings.Select(w => Winding(w, volts[w.Name], measured))];
        return new(part with { Windings = windings }, findings);
    }

    private static Winding Winding(Winding w, double volts, MeasuredTransformer measured)
    {
        var ohms = measured.Ohms.TryGetValue(w.Name, out var said) ? said : w.SectionOhms.Sum();
        var total = w.SectionVolts.Sum();
        return w with
        {
            SectionVolts = [.. w.SectionVolts.Select(v => v * volts / total)],
            SectionOhms = [.. w.SectionVolts.Select(v => ohms * v / total)],
        };
    }

    /// <summary>Follows ratios from the first primary to every winding that they reach.</summary>
    private static void Ratios(
        TransformerPart part,
        MeasuredTransformer measured,
        Dictionary<string, double> volts,
        Dictionary<string, double> drawn,
        List<Finding> findings
    )
    {
        var reached = new HashSet<string>(part.Windings.Where(w => w.IsPrimary).Select(w => w.Name));
        var left = measured.Ratios.ToList();
        while (left.Find(r => reached.Contains(r.First) || reached.Contains(r.Second)) is { } ratio)
        {
            left.Remove(ratio);
            var forward = reached.Contains(ratio.First);
            var (from, to) = forward ? (ratio.First, ratio.Second) : (ratio.Second, ratio.First);
            var given = forward ? volts[from] / ratio.Ratio : volts[from] * ratio.Ratio;
            if (!reached.Add(to))
            {
                Agree(part.Designator, ratio, given, volts[to], findings);
                continue;
            }

            Compare(part.Designator, to, given, drawn[to], findings);
            volts[to] = given;
        }
    }

    private static void Agree(string who, MeasuredRatio ratio, double given, double before, List<Finding> findings)
    {
        if (Times(given, before) > Doubtful)
        {
            findings.Add(
                new(
                    Severity.Error,
                    Place.None,
                    $"{who}: {ratio.First}/{ratio.Second} = {Engineering.Format(ratio.Ratio, "")} cannot be true beside the other ratios and the drawing's primaries",
                    "measure the ratios again with a low voltage on one winding and nothing on the others",
                    who
                )
            );
        }
    }

    private static void Compare(string who, string winding, double given, double drawn, List<Finding> findings)
    {
        var times = Times(given, drawn);
        if (times > Doubtful)
        {
            findings.Add(
                new(
                    times > Impossible ? Severity.Error : Severity.Warning,
                    Place.None,
                    $"{who}: by its ratio {winding} gives {Engineering.Format(given, "V")} off load, by the drawing {Engineering.Format(drawn, "V")}",
                    times > Impossible
                        ? "the two cannot be the same winding: check which pins were measured"
                        : "the measured figure is used",
                    who
                )
            );
        }
    }

    /// <summary>Turns go with volts.</summary>
    private static void Turns(
        TransformerPart part,
        MeasuredTransformer measured,
        Dictionary<string, double> drawn,
        List<Finding> findings
    )
    {
        var counted = part.Windings.Where(w => measured.Turns.ContainsKey(w.Name)).ToArray();
        foreach (var (a, b) in counted.Zip(counted.Skip(1)))
        {
            var (ta, tb) = (measured.Turns[a.Name] / drawn[a.Name], measured.Turns[b.Name] / drawn[b.Name]);
            if (Times(ta, tb) > Doubtful)
            {
                findings.Add(
                    new(
                        Severity.Warning,
                        Place.None,
                        $"{part.Designator}: {a.Name} has {Engineering.Format(ta, "turns per volt")} and {b.Name} {Engineering.Format(tb, "turns per volt")}",
                        "all windings of a core have the same: count again, or the drawing's volts are not right",
                        part.Designator
                    )
                );
            }
        }
    }

    /// <summary>Counted primary turns on a known core tell the flux density.</summary>
    private static void Flux(TransformerPart part, MeasuredTransformer measured, double hertz, List<Finding> findings)
    {
        const double Beyond = 1.9;
        var primary = part.Windings.First(w => w.IsPrimary);
        if (measured.CoreStack is not { } core || !measured.Turns.TryGetValue(primary.Name, out var turns))
        {
            return;
        }

        var tesla = core.Tesla(primary.SectionVolts.Sum() / turns, hertz);
        if (tesla > Beyond)
        {
            findings.Add(
                new(
                    Severity.Error,
                    Place.None,
                    $"{part.Designator}: {Engineering.Format(turns, "turns")} on {core} would need {Engineering.Format(tesla, "T")}, which no iron carries",
                    "count the turns or measure the stack again",
                    part.Designator
                )
            );
        }
    }

    private static double Times(double a, double b) => Math.Max(a / b, b / a);
}
