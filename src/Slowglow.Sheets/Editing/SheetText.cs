using System.Globalization;

namespace Slowglow.Sheets.Editing;

/// <summary>
/// The text of a sheet with changes written into it. Comments, order, spacing and line ends stay as they are, byte for byte, wherever a
/// change does not touch. Every method gives a new text, or a finding that says why the change cannot be made.
/// </summary>
public sealed class SheetText(string text)
{
    /// <summary>The document as it stands.</summary>
    public string Text { get; } = text;

    /// <summary>Replaces what stands after a part's designator by a one-liner such as <c>100k 1W HT2 -> V1.6</c>.</summary>
    public Parsed<SheetText> WithPart(string designator, string line) => WithValue("parts", designator, line);

    /// <summary>Sets the rotation (0 to 1) of a control that the sheet has.</summary>
    public Parsed<SheetText> WithControl(string name, double rotation)
    {
        var percent = Math.Round(Math.Clamp(rotation, 0, 1) * 100, 1).ToString(CultureInfo.InvariantCulture);
        return WithValue("controls", name, percent + " %");
    }

    /// <summary>Adds a part after another, or as the last one.</summary>
    public Parsed<SheetText> WithNewPart(string designator, string line, string? after = null)
    {
        var document = new EditableDocument(Text);
        if (document.Find("parts", designator) is not null)
        {
            return Refused($"{designator} is on the sheet already", "change it, or give the new part another number");
        }

        return after is not null && document.Find("parts", after) is null
            ? Refused($"{after} is not on the sheet", "")
            : Changed(document.Insert("parts", designator, line, after));
    }

    /// <summary>Takes a part out, with the comment on its line.</summary>
    public Parsed<SheetText> WithoutPart(string designator)
    {
        var document = new EditableDocument(Text);
        return document.Find("parts", designator) is { } entry
            ? Changed(document.Remove(entry))
            : Refused($"{designator} is not on the sheet", "");
    }

    private Parsed<SheetText> WithValue(string section, string name, string value)
    {
        var document = new EditableDocument(Text);
        return document.Find(section, name) is { } entry
            ? Changed(document.Replace(entry, value))
            : Refused($"there is no {name} under {section}", "");
    }

    private static Parsed<SheetText> Changed(string? text) =>
        text is null
            ? Refused("the change does not fit the layout of the document", "edit the text by hand here")
            : new Parsed<SheetText>(new SheetText(text), []);

    private static Parsed<SheetText> Refused(string text, string remedy) =>
        new(null, [new Finding(Severity.Error, Place.None, text, remedy)]);
}
