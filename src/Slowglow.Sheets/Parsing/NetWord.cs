namespace Slowglow.Sheets.Parsing;

/// <summary>Reads a word that names a net: a bare word, an inlet pin, or PART.PIN.</summary>
internal static class NetWord
{
    private static readonly string[] Inlet = [NetTable.Live, NetTable.Neutral, NetTable.Earth];

    internal static bool IsReserved(string name) => name == NetTable.Ground || Inlet.Contains(name);

    /// <summary>What stands before the first dot; the whole word when there is none.</summary>
    internal static string PartOf(string name)
    {
        var dot = name.IndexOf('.', StringComparison.Ordinal);
        return dot <= 0 ? name : name[..dot];
    }

    /// <summary>Canonical pin (PART.NUMBER) or word; null after an error.</summary>
    internal static string? Read(Word word, IReadOnlyDictionary<string, PartPlan> parts, SheetContext context, string? subject)
    {
        var text = word.Text;
        var owner = PartOf(text);
        var pin = owner.Length == text.Length ? "" : text[(owner.Length + 1)..];
        if (owner == text)
        {
            return Bare(word, parts, context, subject);
        }

        if (owner == "MAINS")
        {
            return Inlet.Contains(text)
                ? text
                : Reject(word, context, subject, $"the inlet has no '{pin}'", "it has MAINS.L, MAINS.N, MAINS.E");
        }

        if (parts.TryGetValue(owner, out var plan))
        {
            return PinNames.Find(plan.Pins, pin) is { } found
                ? $"{owner}.{found.Number}"
                : Reject(word, context, subject, $"{owner} has no pin '{pin}'", "its pins: " + PinNames.List(plan.Pins));
        }

        if (context.Designators.Contains(owner) || !LooksLikeDesignator(owner))
        {
            // The part has an error of its own, or the word merely holds a dot (+3.3V).
            return text;
        }

        var near = NearestWords.Suggestion(owner, context.Designators);
        return Reject(
            word,
            context,
            subject,
            $"'{text}' names a pin of {owner}, which is not on this sheet",
            near.Length > 0 ? near : $"add {owner} under parts"
        );
    }

    private static string? Bare(Word word, IReadOnlyDictionary<string, PartPlan> parts, SheetContext context, string? subject)
    {
        if (word.Text == "MAINS")
        {
            return Reject(word, context, subject, "MAINS is the inlet, not a net", "write MAINS.L, MAINS.N or MAINS.E");
        }

        return parts.TryGetValue(word.Text, out var plan)
            ? Reject(
                word,
                context,
                subject,
                $"{word.Text} is a part, not a net",
                $"name one of its pins, e.g. {word.Text}.{(plan.Pins.Count > 0 ? plan.Pins[0].Number : "1")}"
            )
            : word.Text;
    }

    private static string? Reject(Word word, SheetContext context, string? subject, string text, string remedy)
    {
        context.Findings.Error(word.Place, subject is null ? text : $"{subject}: {text}", remedy, subject);
        return null;
    }

    internal static bool LooksLikeDesignator(string word) =>
        word.Length >= 2
        && char.IsAsciiLetterUpper(word[0])
        && word.Any(char.IsAsciiDigit)
        && word.All(char.IsAsciiLetterOrDigit);
}
