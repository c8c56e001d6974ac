using YamlDotNet.Core;

namespace Slowglow.Sheets.Yaml;

/// <summary>
/// Reads a document to a tree. A mistake in the YAML itself costs the entry it stands in, not the document: the entry is
/// blanked and the rest is read again.
/// </summary>
internal static class YamlDocumentReader
{
    /// <summary>Root mapping; null when there is nothing to read.</summary>
    internal static YamlMap? Read(string text, FindingList findings)
    {
        if (text.Length > YamlLimits.Size)
        {
            findings.Error(
                Place.None,
                $"the document has {text.Length:N0} characters; {YamlLimits.Size:N0} is the most that is read"
            );
            return null;
        }

        var lines = text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');
        RemoveControlCharacters(lines, findings);
        YamlTabs.Replace(lines, findings);
        for (var mistake = 0; mistake < YamlLimits.Mistakes; mistake++)
        {
            var attempt = new FindingList();
            var builder = new YamlBuilder(lines, attempt);
            try
            {
                var root = builder.Build(string.Join('\n', lines));
                Move(attempt, findings);
                return AsMap(root, findings);
            }
            catch (TooMuchException tooMuch)
            {
                findings.Error(builder.Last, $"the document cannot be read from here on: {tooMuch.Message}");
                return null;
            }
            catch (Exception e)
                when (e is YamlException or InvalidOperationException or ArgumentException or FormatException or OverflowException
                )
            {
                if (!YamlMistake.Blank(lines, e as YamlException, builder, findings))
                {
                    return null;
                }
            }
        }

        findings.Error(Place.None, $"more than {YamlLimits.Mistakes} mistakes in the layout; the rest is not read");
        return null;
    }

    private static void RemoveControlCharacters(string[] lines, FindingList findings)
    {
        for (var i = 0; i < lines.Length; i++)
        {
            var at = YamlCharacters.FirstBad(lines[i]);
            if (at < 0 || (i == 0 && at == 0 && lines[0][0] == '\ufeff'))
            {
                continue;
            }

            findings.Error(new Place(i + 1, at + 1), "a character that is no text stands here", "delete it");
            lines[i] = YamlCharacters.Cleaned(lines[i]);
        }
    }

    private static void Move(FindingList from, FindingList to)
    {
        foreach (var finding in from.InOrder())
        {
            to.Add(finding);
        }
    }

    private static YamlMap? AsMap(YamlNode? root, FindingList findings)
    {
        switch (root)
        {
            case YamlMap map:
                return map;
            case null:
            case YamlScalar { Text: "" }:
                findings.Error(new Place(1, 1), "the document is empty");
                return null;
            default:
                findings.Error(
                    root.Place,
                    $"{root.Kind} stands where keys belong",
                    "begin with a key such as unit: or readings:"
                );
                return null;
        }
    }
}
