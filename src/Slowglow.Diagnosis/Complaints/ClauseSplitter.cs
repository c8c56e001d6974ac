namespace Slowglow.Diagnosis.Complaints;

/// <summary>Cuts a complaint into sentences, clauses and words.</summary>
internal static class ClauseSplitter
{
    private static readonly char[] SentenceEnds = ['.', ';', '!', '?', '\n', '\r'];
    private static readonly HashSet<string> Turns = ["but", "while", "whereas", "though", "although", "however"];

    /// <summary>Sentences, each a list of clauses, each a list of words in lower case.</summary>
    public static IReadOnlyList<IReadOnlyList<IReadOnlyList<string>>> Split(string text) =>
        [
            .. text.ToLowerInvariant()
                .Replace('’', '\'')
                .Split(SentenceEnds, StringSplitOptions.RemoveEmptyEntries)
                .Select(Clauses)
                .Where(s => s.Count > 0),
        ];

    /// <summary>Words of a text: letters, digits, hyphens and apostrophes inside.</summary>
    public static IReadOnlyList<string> Words(string text)
    {
        var words = new List<string>();
        var start = -1;
        for (var i = 0; i <= text.Length; i++)
        {
            var inside = i < text.Length && (char.IsLetterOrDigit(text[i]) || text[i] is '-' or '\'');
            if (inside && start < 0)
            {
                start = i;
            }
            else if (!inside && start >= 0)
            {
                words.Add(text[start..i].Trim('-', '\'').ToLowerInvariant());
                start = -1;
            }
        }
        words.RemoveAll(w => w.Length == 0);
        return words;
    }

    private static IReadOnlyList<IReadOnlyList<string>> Clauses(string sentence)
    {
        var clauses = new List<IReadOnlyList<string>>();
        foreach (var piece in sentence.Split([',', ':', '(', ')']))
        {
            var clause = new List<string>();
            foreach (var word in Words(piece))
            {
                if (Turns.Contains(word))
                {
                    AddIfAny(clauses, clause);
                    clause = [];
                }
                else
                {
                    clause.Add(word);
                }
            }
            AddIfAny(clauses, clause);
        }
        return clauses;
    }

    private static void AddIfAny(List<IReadOnlyList<string>> clauses, List<string> clause)
    {
        if (clause.Count > 0)
        {
            clauses.Add(clause);
        }
    }
}
