using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Editing;

/// <summary>Finds entries by name and splices text at their offsets. Gives null where the result would not read back.</summary>
internal sealed class EditableDocument
{
    private readonly string text;
    private readonly LineIndex lines;
    private readonly YamlMap? root;

    internal EditableDocument(string text)
    {
        this.text = text;
        lines = new LineIndex(text);
        root = YamlDocumentReader.Read(text, new FindingList());
    }

    private YamlMap? Section(string name) => root?.Find(name) as YamlMap;

    internal EditableEntry? Find(string section, string name)
    {
        var map = Section(section);
        var at = map is null ? -1 : map.Entries.ToList().FindIndex(e => e.Key.Text == name);
        return at < 0 ? null : Span(map!, map!.Entries[at]);
    }

    private EditableEntry Span(YamlMap map, YamlEntry entry)
    {
        var first = entry.Key.Place.Line - 1;
        var end = first + 1;
        var last = end;
        while (end < lines.Count && (lines.IsBlank(end) || lines.Indent(end) > lines.Indent(first)))
        {
            last = lines.IsBlank(end) ? last : end + 1;
            end++;
        }

        var colon = text.IndexOf(':', lines.Offset(entry.Key.Place) + entry.Key.Text.Length);
        var (start, finish) = entry.Value switch
        {
            YamlScalar { Text: "" } => (colon + 1, colon + 1),
            YamlScalar { OneLine: false } when text[lines.Offset(entry.Value.Place)] is '"' or '\'' => QuotedEnd(
                lines.Offset(entry.Value.Place)
            ),
            YamlScalar { OneLine: true } scalar => Quoted(lines.Offset(scalar.Place), scalar.Text.Length),
            _ => (lines.Offset(entry.Value.Place), EndOf(last)),
        };
        return new EditableEntry(map, entry, start, finish, first, last);
    }

    private int EndOf(int lineAfter)
    {
        var end = lines.Start(lineAfter);
        while (end > 0 && text[end - 1] is '\r' or '\n')
        {
            end--;
        }

        return end;
    }

    private (int Start, int End) QuotedEnd(int start)
    {
        for (var i = start + 1; i < text.Length; i++)
        {
            if (text[start] == '"' && text[i] == '\\')
            {
                i++;
            }
            else if (text[i] == text[start])
            {
                if (text[start] == '"' || i + 1 >= text.Length || text[i + 1] != '\'')
                {
                    return (start, i + 1);
                }

                i++;
            }
        }

        return (start, text.Length);
    }

    private (int Start, int End) Quoted(int start, int length)
    {
        var quoted =
            start > 0
            && text[start - 1] is '"' or '\''
            && start + length < text.Length
            && text[start + length] == text[start - 1];
        return quoted ? (start - 1, start + length + 1) : (start, start + length);
    }

    internal string? Replace(EditableEntry entry, string value)
    {
        var (start, end) = (entry.ValueStart, entry.ValueEnd);
        if (entry.Entry.Value is not YamlScalar)
        {
            // A list or keys: they may begin on a line of their own, and the one-liner belongs behind the colon.
            start = text.IndexOf(':', lines.Offset(entry.Entry.Key.Place) + entry.Entry.Key.Text.Length) + 1;
            end = IsFlow(entry) ? FlowEnd(entry.ValueStart) : end;
        }

        var blank = start > 0 && text[start - 1] == ':' ? " " : "";
        return ReadsBack(text[..start] + blank + ScalarText.Quote(value, InFlow(entry.Section)) + text[end..], entry, value);
    }

    private bool IsFlow(EditableEntry entry) => text[entry.ValueStart] is '{' or '[';

    private bool InFlow(YamlMap map) => map.Place.Line > 0 && text[lines.Offset(map.Place)] == '{';

    /// <summary>Offset behind the bracket that closes the one at <paramref name="start"/>.</summary>
    private int FlowEnd(int start)
    {
        var depth = 0;
        for (var i = start; i < text.Length; i++)
        {
            depth +=
                text[i] is '{' or '[' ? 1
                : text[i] is '}' or ']' ? -1
                : 0;
            if (depth == 0)
            {
                return i + 1;
            }
        }

        return text.Length;
    }

    private string? ReadsBack(string changed, EditableEntry entry, string value)
    {
        var name = entry.Entry.Key.Text;
        var section = root!.Entries.First(e => e.Value == entry.Section).Key.Text;
        var findings = new FindingList();
        var read = YamlDocumentReader.Read(changed, findings)?.Find(section) as YamlMap;
        return read?.Find(name) is YamlScalar scalar && scalar.Text == value && read.Entries.Count == entry.Section.Entries.Count
            ? changed
            : null;
    }

    internal string? Remove(EditableEntry entry)
    {
        if (InFlow(entry.Section))
        {
            return null;
        }

        var alone = entry.Section.Entries.Count == 1;
        return alone ? null : text[..lines.Start(entry.FirstLine)] + text[lines.Start(entry.EndLine)..];
    }

    internal string? Insert(string section, string name, string value, string? after)
    {
        var map = Section(section);
        if (map is null || map.Entries.Count == 0)
        {
            return root?.Find(section) is null or YamlScalar { Text: "" } ? NewSection(section, name, value) : null;
        }

        if (InFlow(map))
        {
            return null;
        }

        var neighbour = Span(map, map.Entries.FirstOrDefault(e => e.Key.Text == after) ?? map.Entries[^1]);
        var at = lines.Start(neighbour.EndLine);
        var open = at > 0 && text[at - 1] is not ('\n' or '\r') ? lines.NewLine : "";
        return text[..at] + open + Line(neighbour, name, value) + lines.NewLine + text[at..];
    }

    /// <summary>A line like its neighbour: the same indentation, the value in the same column when it fits.</summary>
    private string Line(EditableEntry neighbour, string name, string value)
    {
        var key = neighbour.Entry.Key;
        var indent = lines.Line(neighbour.FirstLine)[..(key.Place.Column - 1)];
        var column = neighbour.Entry.Value is YamlScalar { OneLine: true } scalar ? scalar.Place.Column : 0;
        var lead = $"{indent}{name}:";
        return lead + new string(' ', Math.Max(1, column - 1 - lead.Length)) + ScalarText.Quote(value, false);
    }

    private string NewSection(string section, string name, string value)
    {
        var line = $"  {name}: {ScalarText.Quote(value, false)}{lines.NewLine}";
        if (root?.Entries.FirstOrDefault(e => e.Key.Text == section) is { } empty)
        {
            var at = lines.Start(empty.Key.Place.Line);
            return text[..at] + (at > 0 && text[at - 1] != '\n' ? lines.NewLine : "") + line + text[at..];
        }

        var open = text.Length > 0 && text[^1] is not ('\n' or '\r') ? lines.NewLine : "";
        return $"{text}{open}{section}:{lines.NewLine}{line}";
    }
}
