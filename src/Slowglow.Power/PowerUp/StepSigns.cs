using Slowglow.Circuits;

namespace Slowglow.Power.PowerUp;

/// <summary>Sorts faults by how a step looks with them.</summary>
internal static class StepSigns
{
    private const int MostSigns = 12;
    private const int MostRails = 2;

    /// <summary>What must be switched off at once comes first.</summary>
    private static readonly string[] Heavy = ["lamp brighter", "inlet current high"];

    /// <param name="points">As they should be.</param>
    /// <param name="worlds">Each fault with its answers at the same points.</param>
    /// <param name="lamp">True when a lamp is in.</param>
    public static IReadOnlyList<PowerSign> Of(
        IReadOnlyList<PowerPoint> points,
        IEnumerable<(Fault Fault, Answer[] Answers)> worlds,
        bool lamp
    ) =>
        [
            .. worlds
                .Select(w => (w.Fault, Looks: Look(points, w.Answers, lamp)))
                .Where(w => w.Looks.Length > 0)
                .GroupBy(w => w.Looks)
                .Select(g => new PowerSign(g.Key, [.. g.Select(w => FaultWords.Say(w.Fault))]))
                .OrderByDescending(s => Heavy.Any(h => s.Looks.StartsWith(h, StringComparison.Ordinal)))
                .ThenByDescending(s => s.Suspects.Count)
                .Take(MostSigns),
        ];

    private static string Look(IReadOnlyList<PowerPoint> points, Answer[] answers, bool lamp)
    {
        var inlet = "";
        List<string> rails = [];
        foreach (var (point, answer) in points.Zip(answers))
        {
            if (Word(point, answer) is { } word)
            {
                if (point.Probe.IsInlet)
                {
                    inlet =
                        word == "high"
                            ? (lamp ? "lamp brighter" : "inlet current high")
                            : (lamp ? "lamp darker" : "inlet current low");
                }
                else
                {
                    rails.Add($"{point.Probe.Where} {word}");
                }
            }
        }

        // What is dead says more than what is low.
        var told = rails.OrderBy(r => r.EndsWith("dead", StringComparison.Ordinal) ? 0 : 1).Take(MostRails).ToList();
        if (rails.Count > MostRails)
        {
            told.Add($"{rails.Count - MostRails} more off");
        }

        return string.Join(", ", told.Prepend(inlet).Where(t => t.Length > 0));
    }

    /// <summary>Null when a healthy unit might read so.</summary>
    private static string? Word(PowerPoint point, Answer answer)
    {
        if (!double.IsFinite(point.Nominal) || answer.Kind is AnswerKind.Unsettled or AnswerKind.NotApplicable)
        {
            return null;
        }

        if (!answer.HasValue)
        {
            return point.Unit == "ohm" ? "open" : "floating";
        }

        var v = answer.Value;
        if (v >= point.Low && v <= point.High)
        {
            return null;
        }

        var share = Math.Abs(v) / Math.Max(Math.Abs(point.Nominal), 1e-9);
        return share < 0.1 && !point.Probe.IsInlet ? (point.Unit == "ohm" ? "short" : "dead")
            : Math.Abs(v) > Math.Abs(point.Nominal) ? "high"
            : "low";
    }
}
