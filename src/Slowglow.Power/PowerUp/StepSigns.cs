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
            var looks = LooksOf(point, answer, lamp);
            if (looks is not null && point.Probe.IsInlet)
            {
                inlet = looks;
            }
            else if (looks is not null)
            {
                rails.Add(looks);
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

    /// <summary>Null when a healthy unit might look so.</summary>
    private static string? LooksOf(PowerPoint point, Answer answer, bool lamp)
    {
        if (!double.IsFinite(point.Nominal) || answer.Kind is AnswerKind.Unsettled or AnswerKind.NotApplicable)
        {
            return null;
        }

        return answer.HasValue
            ? point.LooksWith(answer.Value, lamp)
            : $"{point.Probe.Where} {(point.Unit == "ohm" ? "open" : "floating")}";
    }
}
