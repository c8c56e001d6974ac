using Slowglow.Quantities;
using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Parsing;

/// <summary>Takes an entry under parts apart, whichever form it has.</summary>
internal static class PartEntryReader
{
    internal static PartEntry? Read(YamlEntry entry, FindingList findings)
    {
        var designator = entry.Key.Text;
        switch (entry.Value)
        {
            case YamlScalar { Text.Length: > 0 } line:
                var part = new PartEntry { Designator = designator, Place = entry.Key.Place };
                return Line(part, line, findings) ? part : null;
            case YamlMap map:
                return Long(entry.Key, map, findings);
            case YamlScalar:
                findings.Error(entry.Key.Place, $"{designator} says nothing", "write WHAT ratings A -> B", designator);
                return null;
            default:
                findings.Error(
                    entry.Value.Place,
                    $"{designator}: {entry.Value.Kind} stands where a part belongs",
                    "write WHAT ratings A -> B, or keys beginning with is:",
                    designator
                );
                return null;
        }
    }

    private static PartEntry? Long(YamlScalar designator, YamlMap map, FindingList findings)
    {
        var part = new PartEntry
        {
            Designator = designator.Text,
            Place = designator.Place,
            IsLong = true,
        };
        foreach (var entry in map.Entries)
        {
            if (!part.Keys.TryAdd(entry.Key.Text, entry))
            {
                var first = part.Keys[entry.Key.Text].Key.Place;
                findings.Error(
                    entry.Key.Place,
                    $"{part.Designator} has '{entry.Key.Text}' twice",
                    $"the first is on line {first.Line}",
                    part.Designator
                );
            }
        }

        if (part.Keys.Remove("is", out var what))
        {
            if (what.Value is not YamlScalar line)
            {
                findings.Error(
                    what.Value.Place,
                    $"{part.Designator}: 'is' holds {what.Value.Kind}",
                    "write what it is, e.g. is: transformer 20 VA",
                    part.Designator
                );
                return null;
            }

            if (!Line(part, line, findings))
            {
                return null;
            }
        }

        return Ends(part, findings) && Access(part, findings) ? part : null;
    }

    private static bool Line(PartEntry part, YamlScalar line, FindingList findings)
    {
        var words = WordSplitter.Split(line);
        var arrows = words.Count(w => w.Text == WordSplitter.Arrow);
        if (arrows > 1)
        {
            var second = words.Where(w => w.Text == WordSplitter.Arrow).ElementAt(1);
            findings.Error(
                second.Place,
                $"{part.Designator} has two arrows",
                "one part runs from one net to one other: A -> B",
                part.Designator
            );
            return false;
        }

        if (arrows == 1 && !TakeArrow(part, words, findings))
        {
            return false;
        }

        foreach (var word in words.Where(w => IsPair(w.Text)))
        {
            var at = word.Text.IndexOf('=', StringComparison.Ordinal);
            var value = new Word(
                word.Text[(at + 1)..],
                word.Place.Line == 0 ? word.Place : word.Place with { Column = word.Place.Column + at + 1 }
            );
            if (at == 0 || value.Text.Length == 0)
            {
                findings.Error(word.Place, $"{part.Designator}: '{word.Text}' lacks one side", "write pin=NET", part.Designator);
                return false;
            }

            part.Pairs.Add((new Word(word.Text[..at], word.Place), value));
        }

        words.RemoveAll(w => IsPair(w.Text));
        part.Words = WordSplitter.JoinUnits(words);
        return true;
    }

    private static bool IsPair(string text) => text.Contains('=', StringComparison.Ordinal);

    private static bool TakeArrow(PartEntry part, List<Word> words, FindingList findings)
    {
        var at = words.FindIndex(w => w.Text == WordSplitter.Arrow);
        var arrow = words[at];
        if (at == 0 || IsPair(words[at - 1].Text))
        {
            findings.Error(arrow.Place, $"{part.Designator}: no net before the arrow", "write A -> B", part.Designator);
            return false;
        }

        if (at == words.Count - 1 || IsPair(words[at + 1].Text))
        {
            findings.Error(arrow.Place, $"{part.Designator}: no net after the arrow", "write A -> B", part.Designator);
            return false;
        }

        part.From = words[at - 1];
        part.To = words[at + 1];
        words.RemoveRange(at - 1, 3);
        return true;
    }

    private static bool Ends(PartEntry part, FindingList findings)
    {
        if (part.Keys.Remove("between", out var between) && !Between(part, between, findings))
        {
            return false;
        }

        if (part.Keys.Remove("from", out var from) && from.Value is YamlScalar start)
        {
            part.From = start.AsWord;
        }

        if (part.Keys.Remove("to", out var to) && to.Value is YamlScalar finish)
        {
            part.To = finish.AsWord;
        }

        if (part.Keys.TryGetValue("pins", out var pins) && pins.Value is YamlMap map)
        {
            part.Keys.Remove("pins");
            part.Pairs.AddRange(
                map.Entries.Where(e => e.Value is YamlScalar).Select(e => (e.Key.AsWord, ((YamlScalar)e.Value).AsWord))
            );
        }

        return true;
    }

    private static bool Between(PartEntry part, YamlEntry between, FindingList findings)
    {
        switch (between.Value)
        {
            case YamlList { Items: [YamlScalar { Text.Length: > 0 } a, YamlScalar { Text.Length: > 0 } b] }:
                (part.From, part.To) = (a.AsWord, b.AsWord);
                return true;
            case YamlScalar scalar when WordSplitter.Split(scalar) is [var first, { Text: WordSplitter.Arrow }, var last]:
                (part.From, part.To) = (first, last);
                return true;
            default:
                findings.Error(
                    between.Value.Place,
                    $"{part.Designator}: 'between' needs two nets",
                    "write between: [A, B]",
                    part.Designator
                );
                return false;
        }
    }

    private static bool Access(PartEntry part, FindingList findings)
    {
        if (!part.Keys.Remove("access", out var access))
        {
            return true;
        }

        if (
            access.Value is YamlScalar text
            && QuantityText.TryRead(text.Text, Unit.Minute, out var minutes)
            && minutes.Value >= 0
        )
        {
            part.AccessMinutes = minutes.Value;
        }
        else
        {
            findings.Error(access.Value.Place, $"{part.Designator}: 'access' is no time", "write access: 5 min", part.Designator);
        }

        return true;
    }
}
