using System.Globalization;
using Slowglow.Diagnosis.Suspects;
using Slowglow.Quantities;
using Slowglow.Sheets.Parts;

namespace Slowglow.Diagnosis.Advice;

/// <summary>What to do when one suspect stands out: prove it out of circuit, or stop measuring and replace it.</summary>
internal sealed class BenchAdvice(IReadOnlyDictionary<string, Part> parts)
{
    /// <summary>Above this a suspect is worth proving.</summary>
    private const double NearCertain = 0.8;

    /// <summary>Below this nothing is replaced on suspicion.</summary>
    private const double WorthTrying = 0.5;

    /// <summary>Readings that a case still open would take after the next one: common practice, no source.</summary>
    private const double ReadingsToGo = 1.5;

    /// <summary>"Prove it out of circuit: ...", or empty.</summary>
    public string Prove(Suspect? lead) =>
        lead is null || lead.Probability < NearCertain || !parts.TryGetValue(lead.Part, out var part)
            ? ""
            : OutOfCircuit.Say(part, lead.Fault);

    /// <summary>"Stop measuring: ...", or empty. Replacing wins when what a wrong guess would waste is less than what the readings still cost.</summary>
    public string Stop(Suspect? lead, IReadOnlyList<NextReading> next)
    {
        if (
            lead is null
            || lead.Probability < WorthTrying
            || lead.Group.Count > 1
            || next.Count == 0
            || !parts.TryGetValue(lead.Part, out var part)
        )
        {
            return "";
        }
        var replace = OutOfCircuit.MinutesToReplace(part);
        var measure = next[0].Minutes * ReadingsToGo;
        var wasted = (1 - lead.Probability) * replace;
        if (wasted >= measure)
        {
            return "";
        }
        var odds = Math.Round(100 * lead.Probability).ToString(CultureInfo.InvariantCulture);
        return $"Stop measuring, replace {lead.Part}: a new one is in after {Minutes(replace)} and right with {odds} %; "
            + $"a wrong guess wastes {Minutes(wasted)} on average, while settling it by readings costs some {Minutes(measure)}.";
    }

    private static string Minutes(double minutes) => Engineering.Format(Math.Max(minutes, 0.1), "min", 2);
}
