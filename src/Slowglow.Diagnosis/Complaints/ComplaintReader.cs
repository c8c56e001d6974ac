namespace Slowglow.Diagnosis.Complaints;

/// <summary>Reads a complaint in anybody's words. Never fails: what is not understood is passed over.</summary>
internal sealed class ComplaintReader(ChannelWords channels, ControlWords? controls = null)
{
    private static readonly HashSet<string> Denials =
    [
        "no",
        "not",
        "without",
        "never",
        "isn't",
        "doesn't",
        "don't",
        "hasn't",
        "none",
        "nor",
        "zero",
    ];

    /// <summary>Words that do not end the reach of a denial: "no trace of hum", "not at all noisy".</summary>
    private const int DenialReach = 3;

    /// <summary>Everything understood, in the order said.</summary>
    public IReadOnlyList<Heard> Read(string? complaint)
    {
        var heard = new List<Heard>();
        foreach (var sentence in ClauseSplitter.Split(complaint ?? ""))
        {
            ReadSentence(sentence, heard);
        }
        return heard;
    }

    /// <summary>Clauses of which nothing was understood, as said; a clause that only names a channel or a setting is no such clause.</summary>
    public IReadOnlyList<string> PassedOver(string? complaint) =>
        [
            .. ClauseSplitter
                .Split(complaint ?? "")
                .SelectMany(s => s)
                .Where(c => c.Count > 1 && !Enumerable.Range(0, c.Count).Any(i => Vocabulary.Shipped.LongestAt(c, i).Length > 0))
                .Where(c => channels.In(c, null) is null && !IsVolumeDown(c) && !(controls?.In(c).Count > 0))
                .Select(c => string.Join(' ', c)),
        ];

    private void ReadSentence(IReadOnlyList<IReadOnlyList<string>> clauses, List<Heard> heard)
    {
        var first = heard.Count;
        string? channel = null;
        string? only = null;
        foreach (var clause in clauses)
        {
            var own = channels.In(clause, channel);
            channel = clause.Contains("both") || clause.Contains("all") ? null : own ?? channel;
            only = own is not null && clause.Contains("only") ? own : only;
            var start = heard.Count;
            ReadClause(clause, channel, heard);
            if (own is not null && !heard.Skip(start).Any(h => h.Descriptor == Descriptor.Fine && !h.Denied))
            {
                GiveChannel(heard, first, start, own);
            }
        }
        if (only is not null)
        {
            heard.AddRange(channels.Others(only).Select(c => new Heard("only", Descriptor.Fine, c, false, false)));
        }
    }

    /// <summary>"thin, gritty on the first channel": what came before in the sentence was said of the same channel.</summary>
    private static void GiveChannel(List<Heard> heard, int first, int end, string channel)
    {
        for (var i = first; i < end; i++)
        {
            if (heard[i].Channel is null)
            {
                heard[i] = heard[i] with { Channel = channel };
            }
        }
    }

    private void ReadClause(IReadOnlyList<string> words, string? channel, List<Heard> heard)
    {
        var down = IsVolumeDown(words);
        var settings = controls?.In(words) ?? new Dictionary<string, double>();
        var denial = -DenialReach - 1;
        for (var i = 0; i < words.Count; )
        {
            var (length, descriptor) = Vocabulary.Shipped.LongestAt(words, i);
            if (length == 0)
            {
                denial = Denials.Contains(words[i]) ? i : denial;
                i++;
                continue;
            }
            var denied = i - denial <= DenialReach;
            var from =
                denied ? denial
                : descriptor == Descriptor.BlowsFuse ? Math.Max(0, i - 2)
                : i;
            var said = string.Join(' ', words.Skip(from).Take(i + length - from));
            AddOnce(heard, new(said, descriptor, channel, denied, down) { Controls = settings });
            i += length;
        }
    }

    private static void AddOnce(List<Heard> heard, Heard next)
    {
        var isDeniedFine = next is { Descriptor: Descriptor.Fine, Denied: true };
        var known = heard.Any(h => h.Descriptor == next.Descriptor && h.Channel == next.Channel && h.Denied == next.Denied);
        if (!isDeniedFine && !known)
        {
            heard.Add(next);
        }
    }

    private static bool IsVolumeDown(IReadOnlyList<string> words) =>
        words.Any(w => w is "volume" or "gain" or "level" or "fader" or "controls" or "knobs")
        && words.Any(w => w is "down" or "zero" or "off" or "closed" or "minimum");
}
