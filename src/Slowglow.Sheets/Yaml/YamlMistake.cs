using YamlDotNet.Core;

namespace Slowglow.Sheets.Yaml;

/// <summary>Names a mistake in the YAML itself and takes the entry it stands in out of the way.</summary>
internal static class YamlMistake
{
    /// <summary>False when there is nothing left to take away.</summary>
    internal static bool Blank(string[] lines, YamlException? error, YamlBuilder builder, FindingList findings)
    {
        var raised =
            error is null || error.Start.Line < 1 ? builder.Last : new Place((int)error.Start.Line, (int)error.Start.Column);
        var line = builder.OpenFlowLine > 0 ? builder.OpenFlowLine : raised.Line;
        line = Math.Clamp(line, 1, lines.Length);
        while (line > 1 && IsBlank(lines[line - 1]))
        {
            line--;
        }

        if (IsBlank(lines[line - 1]))
        {
            line = Array.FindIndex(lines, l => !IsBlank(l)) + 1;
            if (line == 0)
            {
                return false;
            }
        }

        line = builder.OpenFlowLine > 0 ? line : Culprit(lines, line);
        Report(lines[line - 1], line, raised, builder.OpenFlowLine > 0, findings);
        Take(lines, line - 1);
        return true;
    }

    // A line without its colon is taken for the beginning of a longer text, and the sound line after it gets the blame.
    private static int Culprit(string[] lines, int line)
    {
        var before = line - 1;
        while (before > 1 && IsBlank(lines[before - 1]))
        {
            before--;
        }

        return
            before >= 1
            && !IsBlank(lines[before - 1])
            && HasColon(lines[line - 1])
            && !HasColon(lines[before - 1])
            && lines[before - 1].TrimStart()[0] != '-'
            ? before
            : line;
    }

    private static bool HasColon(string text) => text.Contains(": ", StringComparison.Ordinal) || text.TrimEnd().EndsWith(':');

    private static bool IsBlank(string line) => line.AsSpan().Trim().Length == 0 || line.AsSpan().TrimStart()[0] == '#';

    private static void Report(string text, int line, Place raised, bool inFlow, FindingList findings)
    {
        var indent = text.Length - text.TrimStart().Length;
        var column = raised.Line == line && raised.Column <= text.Length + 1 ? raised.Column : indent + 1;
        if (inFlow && Math.Max(text.LastIndexOf('{'), text.LastIndexOf('[')) is var brace and >= 0)
        {
            findings.Error(
                new Place(line, brace + 1),
                $"'{text[brace]}' is not closed, or a comma is missing inside it",
                text[brace] == '{' ? "write { key: value, key: value }" : "write [one, two]"
            );
        }
        else if (Quote(text) is var quote and >= 0)
        {
            findings.Error(
                new Place(line, quote + 1),
                $"the quote {text[quote]} is not closed",
                "close it, or leave the quotes out"
            );
        }
        else if (SecondColon(text) is var colon and >= 0)
        {
            findings.Error(
                new Place(line, colon + 1),
                "a second ': ' on one line",
                "put what follows between { }, or on lines of its own"
            );
        }
        else if (text.IndexOf(':', StringComparison.Ordinal) is var tight and > 0 && !HasColon(text))
        {
            findings.Error(new Place(line, tight + 1), "no blank follows the colon", "write NAME: value");
        }
        else if (!HasColon(text) && text[indent] != '-')
        {
            findings.Error(
                new Place(line, indent + 1),
                "the line has a name or a value, but no ': ' between them",
                "write NAME: value"
            );
        }
        else if (Reserved(text) is var reserved and >= 0)
        {
            findings.Error(
                new Place(line, reserved + 1),
                $"a value cannot begin with '{text[reserved]}'",
                "put it between quotes"
            );
        }
        else
        {
            findings.Error(
                new Place(line, column),
                "the line does not fit the lines around it",
                "write NAME: value, indented like its neighbours"
            );
        }
    }

    private static int Quote(string text)
    {
        foreach (var mark in "\"'")
        {
            if (text.Count(c => c == mark) % 2 == 1)
            {
                var at = text.IndexOf(mark, StringComparison.Ordinal);
                if (at == 0 || text[at - 1] is ' ' or '[' or '{' or ',')
                {
                    return at;
                }
            }
        }

        return -1;
    }

    private static int Reserved(string text)
    {
        var colon = text.IndexOf(": ", StringComparison.Ordinal);
        var value = colon + 2 + (colon < 0 ? 0 : text[(colon + 2)..].Length - text[(colon + 2)..].TrimStart().Length);
        return colon >= 0 && value < text.Length && "%@`".Contains(text[value], StringComparison.Ordinal) ? value : -1;
    }

    private static int SecondColon(string text)
    {
        var first = text.IndexOf(": ", StringComparison.Ordinal);
        return first < 0 || text.Contains('{', StringComparison.Ordinal)
            ? -1
            : text.IndexOf(": ", first + 1, StringComparison.Ordinal);
    }

    /// <summary>Blanks the line; when it opens a section, everything indented under it too.</summary>
    private static void Take(string[] lines, int index)
    {
        var indent = Indent(lines[index]);
        var opens = lines[index].TrimEnd().EndsWith(':');
        lines[index] = "";
        for (var i = index + 1; opens && i < lines.Length && (IsBlank(lines[i]) || Indent(lines[i]) > indent); i++)
        {
            lines[i] = IsBlank(lines[i]) ? lines[i] : "";
        }
    }

    private static int Indent(string line) => line.Length - line.AsSpan().TrimStart().Length;
}
