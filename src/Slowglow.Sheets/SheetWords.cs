using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets;

/// <summary>The words that the sheet's reader understands, from its own tables: whoever offers words offers these.</summary>
public static class SheetWords
{
    public static IReadOnlyList<KindOfPart> Kinds { get; } =
    [.. PartKinds.All.Select(k => new KindOfPart(k.Name, k.Words, k.Letters, k.Devices))];

    /// <summary>Keys at the left edge of a sheet.</summary>
    public static IReadOnlyList<string> Sections => SheetReading.Sections;
}
