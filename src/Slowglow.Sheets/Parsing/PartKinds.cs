using Slowglow.Quantities;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Connector;
using Slowglow.Sheets.Parts.Contact;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Inductor;
using Slowglow.Sheets.Parts.Lamp;
using Slowglow.Sheets.Parts.Loudspeaker;
using Slowglow.Sheets.Parts.OpAmp;
using Slowglow.Sheets.Parts.Optocoupler;
using Slowglow.Sheets.Parts.Pot;
using Slowglow.Sheets.Parts.Regulator;
using Slowglow.Sheets.Parts.Relay;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Parts.Unknown;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Parts.Wire;

namespace Slowglow.Sheets.Parsing;

/// <summary>The kinds of part, and which of them an entry is. A new kind is one line here and a folder of its own.</summary>
internal static class PartKinds
{
    internal static readonly IReadOnlyList<PartKind> All =
    [
        new ResistorKind(),
        new CapacitorKind(),
        new InductorKind(),
        new PotKind(),
        new DiodeKind(),
        new ValveKind(),
        new TransistorKind(),
        new OptocouplerKind(),
        new OpAmpKind(),
        new RegulatorKind(),
        new TransformerKind(),
        new FuseKind(),
        new LampKind(),
        new ContactKind(),
        new RelayKind(),
        new WireKind(),
        new LoudspeakerKind(),
        new ConnectorKind(),
        new UnknownKind(),
    ];

    /// <summary>The kind by its first word, its type number or its letter; null after an error.</summary>
    internal static PartKind? Of(PartEntry entry, SheetContext context)
    {
        var first = entry.Words.Count > 0 ? entry.Words[0].Text : "";
        var byWord = All.FirstOrDefault(k => k.Words.Contains(first, StringComparer.OrdinalIgnoreCase));
        if (byWord is not null)
        {
            return byWord;
        }

        var byLetter = ByLetter(entry.Designator);
        var plainValue = byLetter is { Devices.Count: 0 } && QuantityText.TryRead(first, out _);
        if (!plainValue && ByDevice(entry, first, context) is { } byDevice)
        {
            return byDevice;
        }

        if (byLetter is PotKind && TransistorEnds(entry))
        {
            return All.First(k => k is TransistorKind);
        }

        if (byLetter is null)
        {
            UnknownLetter(entry, context);
        }

        return byLetter;
    }

    private static PartKind? ByDevice(PartEntry entry, string first, SheetContext context)
    {
        var like = entry.Keys.TryGetValue("like", out var keyed) && keyed.Value is Yaml.YamlScalar text ? text.Text : null;
        var at = entry.Words.FindIndex(w => w.Text == "like");
        like ??= at >= 0 && at + 1 < entry.Words.Count ? entry.Words[at + 1].Text : null;
        like ??= entry.Pairs.Find(p => p.Name.Text == "like").Value.Text;
        var device = context.Devices.Find(like ?? first);
        return device is null ? null : All.FirstOrDefault(k => k.Devices.Contains(device.Kind));
    }

    // TR is a trimmer on some drawings and a transistor on others: the pins tell.
    private static bool TransistorEnds(PartEntry entry) =>
        entry.Pairs.Exists(p =>
            p.Name.Text is "b" or "e" or "d" or "g" or "s" || p.Name.Text is "base" or "emitter" or "gate" or "drain" or "source"
        );

    /// <summary>By the letters before the first digit, or the longest known beginning of them.</summary>
    private static PartKind? ByLetter(string designator)
    {
        var letters = string.Concat(designator.TakeWhile(char.IsAsciiLetter)).ToUpperInvariant();
        for (var length = letters.Length; length > 0; length--)
        {
            var beginning = letters[..length];
            if (All.FirstOrDefault(k => k.Letters.Contains(beginning)) is { } kind)
            {
                return kind;
            }
        }

        return null;
    }

    private static void UnknownLetter(PartEntry entry, SheetContext context)
    {
        context.Findings.Error(
            entry.Place,
            $"{entry.Designator}: no kind of part goes by that letter",
            "begin with what it is: "
                + string.Join(", ", All.Select(k => k.Name))
                + "; or write {is: unknown, between: [A, B], ohms: 47k}",
            entry.Designator
        );
    }
}
