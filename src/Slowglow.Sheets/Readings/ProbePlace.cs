using Slowglow.Sheets.Parsing;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Sheets.Readings;

/// <summary>Reads WHERE: a net, a pin, <c>A - B</c>, a part (across it), a winding (across it), or MAINS.</summary>
internal sealed class ProbePlace(Sheet sheet, FindingList findings)
{
    /// <summary>A probe that knows where, not yet what kind; null after an error.</summary>
    internal Probe? Read(List<Word> words, Place place)
    {
        switch (words)
        {
            case [{ Text: Probe.Inlet or "mains" }]:
                return new Probe(Probe.Inlet, Probe.Inlet, NetTable.Ground, ProbeKind.Ac);
            case [var only]:
                return One(only);
            case [var red, { Text: "-" or "\u2013" or "\u2212" }, var black]:
                return Two(red, black);
            case []:
                findings.Error(place, "the reading does not say where", "write V1.6 = 62 V");
                return null;
            default:
                var text = string.Join(" ", words.Select(w => w.Text));
                findings.Error(words[0].Place, $"'{text}' is no place for a probe", "write a net, a pin, A - B, or a part");
                return null;
        }
    }

    private Probe? One(Word word)
    {
        if (Net(word.Text) is { } net)
        {
            return Between(word, word.Text, net, NetTable.Ground);
        }

        if (sheet.Parts.FirstOrDefault(p => p.Designator == word.Text) is { } part)
        {
            return Across(word, part);
        }

        if (WindingOf(word.Text) is { } winding)
        {
            return Between(word, word.Text, winding.Red, winding.Black);
        }

        return Hyphenated(word) ?? Unknown(word);
    }

    private Probe? Two(Word red, Word black)
    {
        var (first, second) = (Net(red.Text), Net(black.Text));
        if (first is null)
        {
            Unknown(red);
        }

        if (second is null)
        {
            Unknown(black);
        }

        return first is null || second is null ? null : Between(red, $"{red.Text} - {black.Text}", first, second);
    }

    private Probe? Between(Word word, string where, string red, string black)
    {
        if (red != black)
        {
            return new Probe(where, red, black, ProbeKind.Dc);
        }

        findings.Error(
            word.Place,
            $"'{where}' has both leads on one net, {red}",
            "the black lead is on GND unless you write A - B"
        );
        return null;
    }

    private Probe? Across(Word word, Part part)
    {
        switch (part.Pins.Count)
        {
            case 1:
                return Between(word, part.Designator, part.Pins[0].Net, NetTable.Ground);
            case 2:
                return Between(word, part.Designator, part.Pins[0].Net, part.Pins[1].Net);
            default:
                var (a, b) = (part.Pins[0].Number, part.Pins[1].Number);
                findings.Error(
                    word.Place,
                    $"{part.Designator} has {part.Pins.Count} pins: across which two?",
                    $"write {part.Designator}.{a} - {part.Designator}.{b}",
                    part.Designator
                );
                return null;
        }
    }

    private Probe? Hyphenated(Word word)
    {
        for (var at = word.Text.IndexOf('-', 1 < word.Text.Length ? 1 : 0); at > 0; at = word.Text.IndexOf('-', at + 1))
        {
            var (red, black) = (word.Text[..at], word.Text[(at + 1)..]);
            if (Net(red) is { } first && Net(black) is { } second)
            {
                return Between(word, $"{red} - {black}", first, second);
            }
        }

        return null;
    }

    private Probe? Unknown(Word word)
    {
        if (sheet.Parts.FirstOrDefault(p => p.Designator == word.Text) is { } whole)
        {
            findings.Error(
                word.Place,
                $"{whole.Designator} is a part: name one of its pins beside another place",
                "its pins: " + PinNames.List(Plans(whole)),
                whole.Designator
            );
            return null;
        }

        var names = sheet.Nets.Names.Concat(sheet.Parts.Select(p => p.Designator));
        var near = NearestWords.Suggestion(word.Text, names);
        var owner = sheet.Parts.FirstOrDefault(p => p.Designator == NetWord.PartOf(word.Text));
        var remedy =
            owner is not null ? "its pins: " + PinNames.List(Plans(owner))
            : near.Length > 0 ? near
            : "write a net, a pin, A - B, or a part";
        var text = owner is not null
            ? $"{owner.Designator} has no pin '{word.Text[(owner.Designator.Length + 1)..]}'"
            : $"'{word.Text}' is neither a net nor a part of this sheet";
        findings.Error(word.Place, text, remedy, owner?.Designator);
        return null;
    }

    private string? Net(string name) => sheet.Nets.Find(name) ?? (name == NetTable.Ground ? name : PinNet(name));

    private string? PinNet(string name)
    {
        var owner = NetWord.PartOf(name);
        if (owner.Length == name.Length || sheet.Parts.FirstOrDefault(p => p.Designator == owner) is not { } part)
        {
            return null;
        }

        var pin = PinNames.Find(Plans(part), name[(owner.Length + 1)..]);
        return pin is null ? null : part.Pins.First(p => p.Number == pin.Number).Net;
    }

    private static List<PinPlan> Plans(Part part) => [.. part.Pins.Select(p => new PinPlan(p.Number, p.Electrode))];

    private (string Red, string Black)? WindingOf(string name)
    {
        var owner = NetWord.PartOf(name);
        var winding =
            owner.Length == name.Length
                ? null
                : sheet
                    .Parts.OfType<TransformerPart>()
                    .FirstOrDefault(p => p.Designator == owner)
                    ?.Windings.FirstOrDefault(w => w.Name == name[(owner.Length + 1)..]);
        return winding is null
            ? null
            : (sheet.Nets.Find($"{owner}.{winding.Pins[0]}")!, sheet.Nets.Find($"{owner}.{winding.Pins[^1]}")!);
    }
}
