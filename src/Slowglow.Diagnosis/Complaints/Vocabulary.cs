using Slowglow.Diagnosis.Priors;

namespace Slowglow.Diagnosis.Complaints;

/// <summary>Customers' and technicians' phrases and what they mean, from vocabulary.csv.</summary>
internal sealed class Vocabulary
{
    private readonly Dictionary<string, Descriptor> phrases = [];
    private readonly int longest;

    private Vocabulary()
    {
        foreach (var row in EmbeddedTable.Rows("vocabulary.csv"))
        {
            phrases[row[0]] = Enum.Parse<Descriptor>(row[1]);
        }
        longest = phrases.Keys.Max(p => p.Split(' ').Length);
    }

    public static Vocabulary Shipped { get; } = new();

    /// <summary>The longest phrase that begins at a word; length 0 when none does.</summary>
    public (int Length, Descriptor Descriptor) LongestAt(IReadOnlyList<string> words, int start)
    {
        for (var length = Math.Min(longest, words.Count - start); length > 0; length--)
        {
            var phrase = string.Join(' ', words.Skip(start).Take(length));
            if (phrases.TryGetValue(phrase, out var descriptor))
            {
                return (length, descriptor);
            }
        }
        return (0, default);
    }
}
