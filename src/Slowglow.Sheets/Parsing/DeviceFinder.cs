using System.Globalization;
using Slowglow.Quantities;
using Slowglow.Sheets.Devices;

namespace Slowglow.Sheets.Parsing;

/// <summary>Finds the device an entry names, by its type number or by <c>like:</c>.</summary>
internal static class DeviceFinder
{
    /// <summary>The device with its type as written on the sheet; null after an error.</summary>
    internal static (Device Device, string Type)? Find(PartFacts facts, SheetContext context, params DeviceKind[] wanted)
    {
        var entry = facts.Entry;
        var like = Like(facts);
        var type = facts.TakeText("type") ?? Type(entry);
        if (type is null && like is null)
        {
            context.Findings.Error(
                entry.Place,
                $"{entry.Designator} has no type number",
                $"write it like {Example(wanted)}",
                entry.Designator
            );
            return null;
        }

        var name = like ?? type!.Value;
        var device = context.Devices.Find(name.Text);
        if (device is null && context.BrokenTypes.Contains(name.Text))
        {
            return null;
        }

        if (device is null)
        {
            UnknownType(name, entry, context);
            return null;
        }

        if (!wanted.Contains(device.Kind))
        {
            context.Findings.Error(
                name.Place,
                $"{entry.Designator}: {name.Text} is {KindWords.Of(device.Kind)}, not {KindWords.Of(wanted[0])}",
                "",
                entry.Designator
            );
            return null;
        }

        var shown = type?.Text ?? name.Text;
        AssumeLike(entry, like, type, context);
        var spread = DeviceSpread.Override(device, facts);
        DeviceSpread.List(entry.Designator, spread, context);
        return (spread, shown);
    }

    private static void AssumeLike(PartEntry entry, Word? like, Word? type, SheetContext context)
    {
        if (like is { } other && type is { } own && own.Text != other.Text)
        {
            context.Assume(entry.Designator, "figures", $"those of {other.Text}", $"the sheet says {own.Text} is like it");
        }
    }

    private static Word? Like(PartFacts facts)
    {
        if (facts.TakeText("like") is { } keyed)
        {
            return keyed;
        }

        var words = facts.Entry.Words;
        var at = words.FindIndex(w => w.Text is "like" or "like:");
        if (at >= 0 && at + 1 < words.Count)
        {
            var named = words[at + 1];
            words.RemoveRange(at, 2);
            return named;
        }

        var pair = facts.Entry.Pairs.FindIndex(p => p.Name.Text == "like");
        if (pair < 0)
        {
            return null;
        }

        var value = facts.Entry.Pairs[pair].Value;
        facts.Entry.Pairs.RemoveAt(pair);
        return value;
    }

    private static Word? Type(PartEntry entry)
    {
        if (entry.Words.Count == 0)
        {
            return null;
        }

        var word = entry.Words[0];
        entry.Words.RemoveAt(0);
        return word;
    }

    private static void UnknownType(Word type, PartEntry entry, SheetContext context)
    {
        var near = context.Devices.Nearest(type.Text);
        var names = near.Count == 0 ? "" : $"the nearest are {string.Join(", ", near)}; ";
        var example = near.Count == 0 ? "1N4007" : near[0];
        context.Findings.Error(
            type.Place,
            $"{entry.Designator}: '{type.Text}' is not in the device library",
            string.Create(
                CultureInfo.InvariantCulture,
                $"{names}or write like: {example} in the long form, or describe {type.Text} under devices:"
            ),
            entry.Designator
        );
    }

    private static string Example(DeviceKind[] wanted) =>
        wanted[0] switch
        {
            DeviceKind.Triode => "V1: 12AX7",
            DeviceKind.Diode => "D1: 1N4007 A -> B, or zener 12V",
            DeviceKind.Bjt => "Q1: 2N3904 c=A b=B e=C",
            DeviceKind.OpAmp => "U1: TL072",
            DeviceKind.Optocoupler => "OC1: VTL5C3 a=A k=B ra=C rb=D",
            _ => "U2: L7815 in=A gnd=GND out=B",
        };
}
