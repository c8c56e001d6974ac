using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Looks;

/// <summary>Says what looks speak for and against a story.</summary>
internal static class LookSentences
{
    private const double Speaks = 0.28;
    private const double Against = 0.1;

    public static void Add(Posterior posterior, int hypothesis, List<string> explains, List<string> misfits)
    {
        foreach (var look in posterior.Sifted.Looks)
        {
            var chance = posterior.Looks.Chance(look, hypothesis);
            var healthy = posterior.Looks.Chance(look, 0);
            var figure = posterior.Looks.Figure(look, hypothesis);
            var seen = $"you found {look.Probe.Where} {look.Shown}";
            if (chance > Speaks && chance > 1.5 * healthy)
            {
                explains.Add(figure is null ? $"It would show: {seen} (weight by common practice)." : $"{figure}: {seen}.");
            }
            else if (chance < Against)
            {
                misfits.Add(figure is null ? $"It would not show, but {seen}." : $"{figure}, but {seen}.");
            }
        }
    }
}
