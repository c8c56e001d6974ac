namespace Slowglow.Sheets.Yaml;

/// <summary>Tabs: harmless between words, not allowed in front of a line.</summary>
internal static class YamlTabs
{
    /// <summary>Reports tabs in the indentation and indents those lines like their neighbours; other tabs become blanks.</summary>
    internal static void Replace(string[] lines, FindingList findings)
    {
        var indent = 0;
        for (var i = 0; i < lines.Length; i++)
        {
            var bare = lines[i].TrimStart(' ', '\t');
            if (bare.Length == 0 || bare[0] == '#')
            {
                lines[i] = lines[i].Replace('\t', ' ');
                continue;
            }

            var tab = lines[i].AsSpan(0, lines[i].Length - bare.Length).IndexOf('\t');
            if (tab >= 0)
            {
                findings.Error(new Place(i + 1, tab + 1), "the line is indented with a tab", "indent with blanks");
                lines[i] = new string(' ', indent) + bare;
            }

            var own = lines[i].Length - bare.Length;
            indent = bare.EndsWith(':') ? own + 2 : own;
            lines[i] = lines[i].Replace('\t', ' ');
        }
    }
}
