using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Source;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Complaints;

/// <summary>Traits of the sound of hypotheses, asked for once and kept; the likeliest are asked, the rest fall back on stated weights.</summary>
internal sealed class TraitStore(IWorldSource source, HypothesisList hypotheses)
{
    /// <summary>Worlds asked for one word: each trait costs milliseconds a world.</summary>
    private const int Most = 48;

    private readonly Dictionary<(string Condition, Trait Trait, int Hypothesis), SoundTraits> known = [];

    /// <summary>Null for a hypothesis that was not among the likeliest.</summary>
    public SoundTraits? Of(Heard word, string channel, Trait trait, int hypothesis) =>
        known.TryGetValue((Key(word, channel), trait, hypothesis), out var traits) ? traits : null;

    /// <param name="wanted">Likeliest first.</param>
    public void Ensure(
        Heard word,
        string channel,
        Setup setup,
        Trait trait,
        IReadOnlyList<int> wanted,
        IProgress<double>? progress,
        CancellationToken cancel
    )
    {
        var key = Key(word, channel);
        int[] missing = [.. wanted.Take(Most).Append(0).Distinct().Where(h => !known.ContainsKey((key, trait, h)))];
        var found = new SoundTraits[missing.Length];
        var done = 0;
        Parallel.For(
            0,
            missing.Length,
            new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = Environment.ProcessorCount },
            i =>
            {
                found[i] = source.Traits(setup, hypotheses.FaultsOf(missing[i]), channel, trait, cancel);
                progress?.Report((double)Interlocked.Increment(ref done) / missing.Length);
            }
        );
        for (var i = 0; i < missing.Length; i++)
        {
            known[(key, trait, missing[i])] = found[i];
        }
    }

    private static string Key(Heard word, string channel) => channel + "|" + word.Condition;
}
