using Slowglow.Circuits;
using Slowglow.Diagnosis.Hypotheses;

namespace Slowglow.Diagnosis.RootCauses;

/// <summary>Says what is to be checked and why.</summary>
internal static class ConcernWords
{
    /// <summary>All concerns of one part in one entry.</summary>
    public static RootCause Say(IReadOnlyList<Concern> ofPart)
    {
        var sentences = new List<string>();
        var hurt = ofPart.Where(c => !c.IsCause).ToList();
        if (hurt.Count > 0)
        {
            var (least, worst) = (hurt.MinBy(c => c.Excess.Ratio)!, hurt.MaxBy(c => c.Excess.Ratio)!);
            var stands = ReferenceEquals(least, worst) ? worst.Excess.Words : $"{least.Excess.Words} or {worst.Excess.Words}";
            var stories = Listed([.. hurt.Select(c => c.Story.ToString()).Distinct()], "or");
            sentences.Add($"With {stories}, {hurt[0].Part} stands {stands}: check it before the unit goes back to full mains.");
        }

        var causes = ofPart.Where(c => c.IsCause).ToList();
        if (causes.Count > 0)
        {
            var stands = string.Join(", and ", causes.Select(c => $"{c.Suspect} at {c.Excess.Words}"));
            var news = Listed([.. causes.Select(c => c.Suspect).Distinct()], "or");
            sentences.Add($"{Named(causes[0].Story)} would put {stands}: check {causes[0].Part} before a new {news} goes in.");
        }

        return new(ofPart[0].Part, Listed([.. ofPart.Select(c => c.Suspect).Distinct()], "or"), string.Join(' ', sentences));
    }

    /// <summary>"Before power goes back on, check R23 and R24 (hurt by Q12) and R18 (would have killed Q12)."</summary>
    public static string BeforePower(IReadOnlyList<IReadOnlyList<Concern>> byPart)
    {
        var hurt = byPart.Where(p => !p[0].IsCause).ToList();
        var causes = byPart.Where(p => p[0].IsCause).ToList();
        var pieces = new List<string>();
        if (hurt.Count > 0)
        {
            pieces.Add($"{Parts(hurt)} (overloaded by {Suspects(hurt)})");
        }

        if (causes.Count > 0)
        {
            pieces.Add($"{Parts(causes)} (could have killed {Suspects(causes)})");
        }

        return pieces.Count == 0 ? "" : $"Before power goes back on, check {string.Join(", and ", pieces)}.";
    }

    private static string Parts(IEnumerable<IReadOnlyList<Concern>> of) => Listed([.. of.Select(p => p[0].Part)], "and");

    private static string Suspects(IEnumerable<IReadOnlyList<Concern>> of) =>
        Listed([.. of.SelectMany(p => p).Select(c => c.Suspect).Distinct()], "or");

    /// <summary>The mildest severity that does the harm is named: a worse one does more.</summary>
    private static string Named(Fault story) => SeverityLadder.IsSoft(story) ? $"{story} or worse" : story.ToString();

    private static string Listed(IReadOnlyList<string> names, string last) =>
        names.Count == 1 ? names[0] : $"{string.Join(", ", names.SkipLast(1))} {last} {names[^1]}";
}
