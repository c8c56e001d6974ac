using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Slowglow.Sheets.Yaml;

/// <summary>Builds the tree from parser events, with bounds on depth and on what aliases repeat.</summary>
internal sealed class YamlBuilder(string[] lines, FindingList findings)
{
    private readonly Dictionary<string, (YamlNode Node, int Size)> anchors = [];
    private readonly Stack<(int Line, bool Flow)> open = new();
    private int nodes;

    /// <summary>Place of the last event: malformed input may fail without a place of its own.</summary>
    internal Place Last { get; private set; } = new(1, 1);

    /// <summary>Line where the outermost bracket or brace not yet closed stands; 0 = none.</summary>
    internal int OpenFlowLine => open.Reverse().FirstOrDefault(o => o.Flow).Line;

    /// <summary>Root of the first document; null when it is empty.</summary>
    internal YamlNode? Build(string text)
    {
        var parser = new Parser(new StringReader(text));
        YamlNode? root = null;
        while (Next(parser))
        {
            switch (parser.Current)
            {
                case StreamStart or StreamEnd or DocumentEnd:
                    break;
                case DocumentStart:
                    if (root is not null)
                    {
                        findings.Warning(
                            Last,
                            "a second document begins here and is not read",
                            "one sheet or one set of readings a file"
                        );
                        return root;
                    }

                    break;
                case { } first:
                    root = Node(parser, first, 0);
                    break;
            }
        }

        return root;
    }

    private bool Next(Parser parser)
    {
        if (!parser.MoveNext())
        {
            return false;
        }

        Last = PlaceOf(parser.Current!.Start);
        return true;
    }

    // The parser's place at the end of the text may lie a line below it.
    private Place PlaceOf(Mark mark) =>
        mark.Line <= lines.Length ? new((int)mark.Line, (int)mark.Column) : new(lines.Length, lines[^1].Length + 1);

    private YamlNode Node(Parser parser, ParsingEvent start, int depth)
    {
        if (depth > YamlLimits.Depth)
        {
            throw new TooMuchException($"nesting deeper than {YamlLimits.Depth} levels");
        }

        var before = nodes;
        Count(1);
        var place = PlaceOf(start.Start);
        YamlNode node = start switch
        {
            Scalar scalar => ScalarOf(scalar, place),
            SequenceStart list => List(parser, place, list.Style == SequenceStyle.Flow, depth),
            MappingStart map => Map(parser, place, map.Style == MappingStyle.Flow, depth),
            AnchorAlias alias => Repeated(alias, place),
            _ => new YamlScalar("", place, false),
        };
        if (start is NodeEvent { Anchor.IsEmpty: false } anchored)
        {
            anchors[anchored.Anchor.Value] = (node, nodes - before);
        }

        return node;
    }

    private void Count(int more)
    {
        nodes += more;
        if (nodes > YamlLimits.Nodes)
        {
            throw new TooMuchException($"more than {YamlLimits.Nodes} entries, aliases counted in full");
        }
    }

    private YamlNode Repeated(AnchorAlias alias, Place place)
    {
        if (anchors.TryGetValue(alias.Value.Value, out var found))
        {
            Count(found.Size);
            return found.Node;
        }

        findings.Error(place, $"*{alias.Value.Value} repeats something that is not marked &{alias.Value.Value} before it", "");
        return new YamlScalar("", place, false);
    }

    private YamlScalar ScalarOf(Scalar scalar, Place place)
    {
        var quoted = scalar.Style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted;
        var column = place.Column + (quoted ? 1 : 0);
        var line = place.Line >= 1 && place.Line <= lines.Length ? lines[place.Line - 1] : "";
        var end = column - 1 + scalar.Value.Length;
        var closed =
            !quoted || (end < line.Length && line[end] == line[column - 2] && !(end + 1 < line.Length && line[end + 1] == '\''));
        var oneLine =
            closed
            && column >= 1
            && column - 1 <= line.Length
            && line.AsSpan(column - 1).StartsWith(scalar.Value, StringComparison.Ordinal);
        return new YamlScalar(scalar.Value, oneLine ? place with { Column = column } : place, oneLine);
    }

    private YamlList List(Parser parser, Place place, bool flow, int depth)
    {
        var items = new List<YamlNode>();
        open.Push((place.Line, flow));
        while (Next(parser) && parser.Current is not SequenceEnd)
        {
            items.Add(Node(parser, parser.Current!, depth + 1));
        }

        open.Pop();
        return new YamlList(items, place);
    }

    private YamlMap Map(Parser parser, Place place, bool flow, int depth)
    {
        var entries = new List<YamlEntry>();
        open.Push((place.Line, flow));
        while (Next(parser) && parser.Current is not MappingEnd)
        {
            var key = Node(parser, parser.Current!, depth + 1);
            Next(parser);
            var value = Node(parser, parser.Current!, depth + 1);
            if (flow && entries.Count > 0 && DecimalComma.Joined(entries[^1], key, value) is { } joined)
            {
                entries[^1] = joined;
            }
            else if (key is YamlScalar { Text: "" })
            {
                findings.Error(key.Place, "a ':' stands here without a name before it", "write NAME: value");
            }
            else if (key is YamlScalar name)
            {
                entries.Add(new YamlEntry(name, value));
            }
            else
            {
                findings.Error(key.Place, $"{key.Kind} stands where a name belongs", "write NAME: value");
            }
        }

        open.Pop();
        return new YamlMap(entries, place);
    }
}
