using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Parts.Connector;

/// <summary>Reads jacks and other connectors: <c>J1: jack A</c>, <c>J2: jack tip=A ring=B sleeve=GND</c>.</summary>
internal sealed class ConnectorKind : PartKind
{
    internal override string Name => "connector";
    internal override IReadOnlyList<string> Words => ["jack", "connector", "socket", "plug"];
    internal override IReadOnlyList<string> Letters => ["J", "JK", "SK", "CN", "PLG"];

    internal override PartPlan? Plan(PartEntry entry, SheetContext context)
    {
        var facts = new PartFacts(entry, context);
        var word = facts.TakeWord("jack", "connector", "socket", "plug") ?? "jack";
        while (
            facts.TakeWord("mono", "stereo", "switched", "jack", "socket", "plug", "input", "output", "phono", "xlr", "din")
                is not null
        ) { }

        var pins = Ends(entry);
        facts.ReportRest();
        if (pins.Count == 0)
        {
            context.Findings.Error(
                entry.Place,
                $"{entry.Designator} does not say where its lead goes",
                "write jack NET",
                entry.Designator
            );
            return null;
        }

        // With nothing plugged in, a switched jack's contacts are in the position "out".
        context.Switches.Add(new Switch(entry.Designator, ["out", "in"], entry.Place));
        return new PartPlan(
            entry,
            pins,
            ends => new ConnectorPart
            {
                Designator = entry.Designator,
                Place = entry.Place,
                Pins = ends,
                Description = word,
            }
        );
    }

    private static List<PinPlan> Ends(PartEntry entry)
    {
        var nets = new List<Word>();
        nets.AddRange(entry.From is { } from ? [from] : []);
        nets.AddRange(entry.To is { } to ? [to] : []);
        nets.AddRange(entry.Words);
        entry.Words.Clear();
        List<PinPlan> pins = [.. nets.Select((n, i) => new PinPlan($"{i + 1}") { End = n })];
        foreach (var (name, net) in entry.Pairs)
        {
            var number = char.IsAsciiDigit(name.Text[0]) ? name.Text : $"{pins.Count + 1}";
            pins.Add(new PinPlan(number, number == name.Text ? "" : name.Text) { End = net });
        }

        foreach (var key in entry.Keys.Values.Where(k => k.Value is Yaml.YamlScalar && k.Key.Text != "note").ToList())
        {
            entry.Keys.Remove(key.Key.Text);
            pins.Add(new PinPlan($"{pins.Count + 1}", key.Key.Text) { End = ((Yaml.YamlScalar)key.Value).AsWord });
        }

        return pins;
    }
}
