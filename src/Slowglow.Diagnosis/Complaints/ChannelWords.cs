using Slowglow.Sheets;

namespace Slowglow.Diagnosis.Complaints;

/// <summary>Finds which channel a clause speaks of: by its name on the sheet, by number, by side.</summary>
internal sealed class ChannelWords(IReadOnlyList<SignalPath> paths)
{
    private static readonly HashSet<string> Nouns = ["channel", "channels", "ch", "input", "side", "one", "half"];

    private static readonly Dictionary<string, int> Ordinals = new()
    {
        ["first"] = 0,
        ["1st"] = 0,
        ["1"] = 0,
        ["one"] = 0,
        ["a"] = 0,
        ["left"] = 0,
        ["l"] = 0,
        ["second"] = 1,
        ["2nd"] = 1,
        ["2"] = 1,
        ["b"] = 1,
        ["right"] = 1,
        ["r"] = 1,
        ["two"] = 1,
        ["third"] = 2,
        ["3rd"] = 2,
        ["3"] = 2,
    };

    /// <summary>The channel a clause names, or null; <paramref name="previous"/> tells what "the other one" is.</summary>
    public string? In(IReadOnlyList<string> words, string? previous)
    {
        if (paths.Count < 2)
        {
            return null;
        }
        var (odd, plain) = (paths.Where(p => !IsNumberWord(p.Name)), paths.Where(p => IsNumberWord(p.Name)));
        return ByName(odd, words) ?? ByOther(words, previous) ?? ByOrdinal(words) ?? ByName(plain, words);
    }

    /// <summary>All but the one named.</summary>
    public IEnumerable<string> Others(string channel) => paths.Select(p => p.Name).Where(n => n != channel);

    /// <summary>A channel called "one" must not be found in "the second one".</summary>
    private static bool IsNumberWord(string name) => Nouns.Contains(name.ToLowerInvariant());

    private static string? ByName(IEnumerable<SignalPath> paths, IReadOnlyList<string> words)
    {
        foreach (var path in paths)
        {
            var name = ClauseSplitter.Words(path.Name);
            for (var i = 0; name.Count > 0 && i + name.Count <= words.Count; i++)
            {
                if (words.Skip(i).Take(name.Count).SequenceEqual(name) && !IsPlainWord(words, i, name))
                {
                    return path.Name;
                }
            }
        }
        return null;
    }

    /// <summary>"normal" is a channel of many amplifiers and an ordinary word besides: a channel only beside a noun.</summary>
    private static bool IsPlainWord(IReadOnlyList<string> words, int at, IReadOnlyList<string> name)
    {
        if (name.Count > 1 || Vocabulary.Shipped.LongestAt(name, 0).Length == 0 && name[0].Length > 1)
        {
            return false;
        }
        return !IsNoun(words, at - 1) && !IsNoun(words, at + 1);
    }

    private string? ByOther(IReadOnlyList<string> words, string? previous)
    {
        if (previous is null || paths.Count != 2 || !(words.Contains("other") || words.Contains("rest")))
        {
            return null;
        }
        return paths[0].Name == previous ? paths[1].Name : paths[0].Name;
    }

    private string? ByOrdinal(IReadOnlyList<string> words)
    {
        for (var i = 0; i < words.Count; i++)
        {
            if (!Ordinals.TryGetValue(words[i], out var number) || number >= paths.Count)
            {
                continue;
            }
            var standsAlone = words[i] is "left" or "right" or "first" or "second" or "third";
            var followed = IsNoun(words, i + 1) && words[i].Length > 1 && words[i] != "one";
            if (standsAlone || followed || (IsNoun(words, i - 1) && words[i - 1] != "one"))
            {
                return paths[number].Name;
            }
        }
        return null;
    }

    private static bool IsNoun(IReadOnlyList<string> words, int at) => at >= 0 && at < words.Count && Nouns.Contains(words[at]);
}
