using Slowglow.Diagnosis.Complaints;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Likelihood;

/// <summary>What an unsteady reading says of the kinds of part that fail unsteadily: the weights of "comes and goes" in practice.csv.</summary>
internal sealed class Unsteadiness(Knowledge knowledge, IReadOnlyList<Reading> readings)
{
    private readonly bool isUnsteady = readings.Any(r => r.Said == MeterSaid.Unstable);

    /// <summary>Log odds against a part of no such kind; several unsteady readings are one piece of evidence.</summary>
    public double Log(int hypothesis)
    {
        var story = knowledge.Hypotheses[hypothesis];
        if (!isUnsteady || story.IsHealthy)
        {
            return isUnsteady ? Math.Log(0.3) : 0;
        }
        var weights = PracticeWeights.Shipped;
        var chance = story.Faults.Max(f => weights.Of(Descriptor.Intermittent, knowledge.Masses.KindOf(f.Part)));
        return Math.Log(chance / PracticeWeights.Otherwise);
    }
}
