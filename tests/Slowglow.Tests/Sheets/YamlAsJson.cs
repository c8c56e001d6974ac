using System.Globalization;
using System.Text.Json.Nodes;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Slowglow.Tests.Sheets;

/// <summary>A YAML document as an editor's schema checker sees it: plain scalars resolved by the core schema of YAML 1.2.</summary>
internal static class YamlAsJson
{
    internal static JsonNode? Read(string text)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        return Node(stream.Documents[0].RootNode);
    }

    private static JsonNode? Node(YamlNode node) =>
        node switch
        {
            YamlMappingNode map => new JsonObject(
                map.Children.Select(c => KeyValuePair.Create(((YamlScalarNode)c.Key).Value!, Node(c.Value)))
            ),
            YamlSequenceNode list => new JsonArray([.. list.Children.Select(Node)]),
            _ => Scalar((YamlScalarNode)node),
        };

    private static JsonNode? Scalar(YamlScalarNode scalar)
    {
        var text = scalar.Value ?? "";
        if (scalar.Style != ScalarStyle.Plain)
        {
            return text;
        }

        return text switch
        {
            "" or "~" or "null" => null,
            "true" or "false" => text == "true",
            _ when double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
                    && double.IsFinite(number) => number,
            _ => text,
        };
    }
}
