using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Setups;

namespace Slowglow.Sheets.Readings;

/// <summary>Reads what was seen, smelt or felt: <c>R9 burnt</c>, <c>hot U2</c>, <c>V1 heater dark</c>, <c>C1 and C2 bulged on slow</c>.</summary>
internal sealed class LookLine(Sheet sheet, IReadOnlyList<Setup> setups, FindingList findings)
{
    private const string Known =
        "burnt, hot, cool, heater glowing, heater dark, anode red, bulged, leaking, cracked, dry joint, arcing, looks fine";

    /// <summary>True when a part of the sheet is named as a word by itself and nothing in the line looks like a figure.</summary>
    internal bool IsOne(IReadOnlyList<Word> words) =>
        words.Any(w => PartOf(w) is not null)
        && words.Count > 1
        && words.All(w => PartOf(w) is not null || !w.Text.Any(char.IsAsciiDigit) || IsSetup(w));

    /// <summary>One reading for each part named, chained; null after an error.</summary>
    internal Reading? Read(List<Word> words, string text, Place place)
    {
        var setup = TakeSetup(words);
        Part[] parts = [.. words.Select(PartOf).OfType<Part>()];
        if (LookWords.Of(words.Where(w => PartOf(w) is null).Select(w => w.Text)) is not { } look)
        {
            var said = string.Join(' ', words.Where(w => PartOf(w) is null).Select(w => w.Text));
            findings.Error(
                place,
                $"'{said}' is not something to be seen, smelt or felt of a part",
                $"write {parts[0].Designator} and one of: {Known}; or a reading such as V1.6 = 62 V",
                parts[0].Designator
            );
            return null;
        }

        foreach (var part in parts)
        {
            if (LookWords.Refuses(look, part) is { } refusal)
            {
                findings.Error(place, refusal, $"what can be said: {Known}", part.Designator);
                return null;
            }
        }

        Reading? chain = null;
        foreach (var part in parts.Reverse())
        {
            var probe = new Probe(part.Designator, part.Pins[0].Net, NetTable.Ground, ProbeKind.Look);
            chain = new Reading(probe, setup, MeterSaid.Look, double.NaN, MeterClass.Handheld, text, place)
            {
                Look = look,
                Also = chain,
            };
        }
        return chain;
    }

    private Part? PartOf(Word word)
    {
        var name = word.Text.Trim(',', '.', ';', ':');
        return sheet.Parts.FirstOrDefault(p => p.Designator == name && p.Pins.Count > 0);
    }

    private bool IsSetup(Word word) => setups.Any(s => s.Name == word.Text);

    private Setup TakeSetup(List<Word> words)
    {
        var on = words.FindIndex(w => w.Text == "on");
        if (on >= 0 && on + 1 < words.Count && setups.FirstOrDefault(s => s.Name == words[on + 1].Text) is { } named)
        {
            words.RemoveRange(on, 2);
            return named;
        }
        return setups.Count > 0 ? setups[0] : Setup.Default;
    }
}
