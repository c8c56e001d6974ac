using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Editing;

/// <summary>An entry of the document and the offsets it covers.</summary>
/// <param name="Section">The mapping it stands in.</param>
/// <param name="Entry">Key and value.</param>
/// <param name="ValueStart">Offset of the value; right behind the colon when there is none.</param>
/// <param name="ValueEnd">Offset behind the value.</param>
/// <param name="FirstLine">Index of its first line.</param>
/// <param name="EndLine">Index of the first line that is no longer its own.</param>
internal sealed record EditableEntry(YamlMap Section, YamlEntry Entry, int ValueStart, int ValueEnd, int FirstLine, int EndLine);
