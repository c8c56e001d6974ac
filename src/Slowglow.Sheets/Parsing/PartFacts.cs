using Slowglow.Quantities;
using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Parsing;

/// <summary>Asks an entry for figures and words one by one; what nobody asked for is reported at the end.</summary>
internal sealed class PartFacts(PartEntry entry, SheetContext context)
{
    internal PartEntry Entry => entry;
    internal string Designator => entry.Designator;

    /// <summary>The figure under one of the keys, or else the first word of that unit; NaN when there is none.</summary>
    internal Figure Take(Unit unit, params ReadOnlySpan<string> keys)
    {
        var keyed = TakeKey(unit, keys);
        if (keyed.IsGiven || keyed.IsBroken)
        {
            return keyed;
        }

        var at = entry.Words.FindIndex(w => QuantityText.TryRead(w.Text, out var q) && q.Unit == unit);
        return at < 0 ? Figure.Missing : TakeWordAt(at);
    }

    /// <summary>The value proper: as <see cref="Take"/>, but a figure without a unit counts too.</summary>
    internal Figure TakeValue(Unit unit, params ReadOnlySpan<string> keys)
    {
        var keyed = TakeKey(unit, keys);
        if (keyed.IsGiven || keyed.IsBroken)
        {
            return keyed;
        }

        var at = entry.Words.FindIndex(w => QuantityText.TryRead(w.Text, unit, out _));
        return at < 0 ? Figure.Missing : TakeWordAt(at);
    }

    /// <summary>The figure under one of the keys of the long form only.</summary>
    internal Figure TakeKeyed(Unit unit, params ReadOnlySpan<string> keys) => TakeKey(unit, keys);

    private Figure TakeWordAt(int at)
    {
        var word = entry.Words[at];
        entry.Words.RemoveAt(at);
        QuantityText.TryRead(word.Text, out var quantity);
        Doubt(word, quantity);
        return new Figure(quantity.Value, word);
    }

    private Figure TakeKey(Unit unit, ReadOnlySpan<string> keys)
    {
        foreach (var key in keys)
        {
            entry.KnownKeys.Add(key);
            if (!entry.Keys.Remove(key, out var found))
            {
                continue;
            }

            if (found.Value is YamlScalar scalar && QuantityText.TryRead(scalar.Text, unit, out var quantity))
            {
                Doubt(scalar.AsWord, quantity);
                return new Figure(quantity.Value, scalar.AsWord);
            }

            var what = found.Value is YamlScalar wrong ? $"'{wrong.Text}'" : found.Value.Kind;
            context.Findings.Error(
                found.Value.Place,
                $"{Designator}: {what} is no figure in {UnitNames.Of(unit)}",
                UnitNames.Example(unit),
                Designator
            );
            return Figure.Broken;
        }

        return Figure.Missing;
    }

    private void Doubt(Word word, Quantity quantity) => Doubts.Report(word, quantity, Designator, context.Findings);

    /// <summary>The first of these words that stands in the entry (any case); null when none does.</summary>
    internal string? TakeWord(params ReadOnlySpan<string> words)
    {
        foreach (var word in words)
        {
            entry.KnownWords.Add(word);
        }

        foreach (var word in words)
        {
            var at = entry.Words.FindIndex(w => string.Equals(w.Text, word, StringComparison.OrdinalIgnoreCase));
            if (at >= 0)
            {
                entry.Words.RemoveAt(at);
                return word;
            }
        }

        return null;
    }

    /// <summary>The text under a key; null when it is not there.</summary>
    internal Word? TakeText(string key)
    {
        entry.KnownKeys.Add(key);
        if (!entry.Keys.Remove(key, out var found))
        {
            return null;
        }

        if (found.Value is YamlScalar { Text.Length: > 0 } scalar)
        {
            return scalar.AsWord;
        }

        context.Findings.Error(found.Value.Place, $"{Designator}: '{key}' holds {found.Value.Kind}", "", Designator);
        return null;
    }

    /// <summary>The next word that is no figure; null when none is left.</summary>
    internal Word? TakeName()
    {
        var at = entry.Words.FindIndex(w => !QuantityText.TryRead(w.Text, out _) && !char.IsAsciiDigit(w.Text[0]));
        if (at < 0)
        {
            return null;
        }

        var word = entry.Words[at];
        entry.Words.RemoveAt(at);
        return word;
    }

    /// <summary>Tolerance as a fraction; assumed, and listed, when the sheet says none.</summary>
    internal double Tolerance(double assumed, string reason)
    {
        var given = Take(Unit.Percent, "tolerance");
        if (given.IsGiven && given.Value is > 0 and < 1)
        {
            return given.Value;
        }

        if (given.IsGiven)
        {
            context.Findings.Error(
                given.Word.Place,
                $"{Designator}: a tolerance of {given.Word.Text} cannot be",
                "write 5 %",
                Designator
            );
        }

        context.Assume(Designator, "tolerance", Engineering.Format(assumed * 100, "%"), reason);
        return assumed;
    }

    /// <summary>A figure that must be there and positive; false after an error.</summary>
    internal bool Require(Figure figure, string what, string example, double most = double.MaxValue)
    {
        if (figure.IsBroken)
        {
            return false;
        }

        if (!figure.IsGiven)
        {
            var suspect = entry.Words.FirstOrDefault(w => char.IsAsciiDigit(w.Text[0]) || w.Text[0] is '.' or ',');
            if (suspect.Text is null)
            {
                suspect = entry.Words.Count == 1 ? entry.Words[0] : default;
            }

            var text = suspect.Text is null ? $"{Designator} has no {what}" : $"{Designator}: '{suspect.Text}' is no {what}";
            context.Findings.Error(
                suspect.Text is null ? entry.Place : suspect.Place,
                text,
                $"write it like {example}",
                Designator
            );
            return false;
        }

        if (figure.Value > 0 && figure.Value <= most)
        {
            return true;
        }

        context.Findings.Error(
            figure.Word.Place,
            $"{Designator}: {figure.Word.Text} cannot be its {what}",
            $"write it like {example}",
            Designator
        );
        return false;
    }

    /// <summary>Reports everything that nobody asked for.</summary>
    internal void ReportRest()
    {
        _ = TakeText("note");
        foreach (var word in entry.Words)
        {
            ReportWord(word);
        }

        foreach (var key in entry.Keys.Values)
        {
            var near = NearestWords.Suggestion(key.Key.Text, entry.KnownKeys);
            context.Findings.Error(
                key.Key.Place,
                $"{Designator} has no use for '{key.Key.Text}'",
                near.Length > 0 ? near : "keys here: " + string.Join(", ", entry.KnownKeys.Order(StringComparer.Ordinal)),
                Designator
            );
        }

        entry.Words.Clear();
        entry.Keys.Clear();
    }

    private void ReportWord(Word word)
    {
        if (QuantityText.TryRead(word.Text, out _))
        {
            context.Findings.Error(
                word.Place,
                $"{Designator}: '{word.Text}' is one figure too many here",
                "leave it out, or give it the right unit",
                Designator
            );
        }
        else if (char.IsAsciiDigit(word.Text[0]))
        {
            context.Findings.Error(
                word.Place,
                $"{Designator}: '{word.Text}' is neither a value nor a rating",
                "write ratings like 1 W, 400 V, 5 %",
                Designator
            );
        }
        else
        {
            context.Findings.Warning(
                word.Place,
                $"{Designator}: the word '{word.Text}' is not understood and is left out",
                NearestWords.Suggestion(word.Text, entry.KnownWords),
                Designator
            );
        }
    }
}
