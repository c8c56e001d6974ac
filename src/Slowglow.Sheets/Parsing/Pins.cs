using Slowglow.Sheets.Devices;

namespace Slowglow.Sheets.Parsing;

/// <summary>Lays out the pins of an entry and ties them to what its ends say.</summary>
internal static class Pins
{
    /// <summary>Pins 1 and 2 of a two-terminal part, tied to the arrow or to named ends.</summary>
    internal static List<PinPlan> Two(PartFacts facts, SheetContext context, string first = "", string second = "")
    {
        List<PinPlan> pins = [new("1", first), new("2", second)];
        Tie(pins, facts, context);
        return pins;
    }

    /// <summary>Ties pins to arrow ends (two-terminal parts only) and named ends.</summary>
    internal static void Tie(IReadOnlyList<PinPlan> pins, PartFacts facts, SheetContext context)
    {
        var entry = facts.Entry;
        if (entry.From is { } from || entry.To is not null)
        {
            if (pins.Count != 2)
            {
                var place = (entry.From ?? entry.To)!.Value.Place;
                context.Findings.Error(
                    place,
                    $"{entry.Designator} has {pins.Count} pins, an arrow names only two",
                    "name them: " + Example(pins),
                    entry.Designator
                );
            }
            else
            {
                (pins[0].End, pins[1].End) = (entry.From, entry.To);
            }
        }

        foreach (var (name, net) in entry.Pairs)
        {
            Named(pins, name, net, entry, context);
        }

        foreach (var key in entry.Keys.Values.Where(k => k.Value is Yaml.YamlScalar).ToList())
        {
            if (PinNames.Find(pins, key.Key.Text) is { } pin)
            {
                entry.Keys.Remove(key.Key.Text);
                Give(pin, key.Key.AsWord, ((Yaml.YamlScalar)key.Value).AsWord, entry, context);
            }
        }
    }

    private static void Named(IReadOnlyList<PinPlan> pins, Word name, Word net, PartEntry entry, SheetContext context)
    {
        if (PinNames.Find(pins, name.Text) is { } pin)
        {
            Give(pin, name, net, entry, context);
            return;
        }

        context.Findings.Error(
            name.Place,
            $"{entry.Designator} has no pin '{name.Text}'",
            "its pins: " + PinNames.List(pins),
            entry.Designator
        );
    }

    private static void Give(PinPlan pin, Word name, Word net, PartEntry entry, SheetContext context)
    {
        if (pin.End is not null)
        {
            context.Findings.Error(name.Place, $"{entry.Designator}: pin '{name.Text}' is given twice", "", entry.Designator);
            return;
        }

        pin.End = net;
    }

    private static string Example(IReadOnlyList<PinPlan> pins) =>
        string.Join(" ", pins.Take(3).Select((p, i) => $"{(p.Electrode.Length > 0 ? p.Electrode : p.Number)}={(char)('A' + i)}"));

    /// <summary>Pins of a device by its pinout; electrodes of further sections carry the section's number.</summary>
    internal static List<PinPlan> OfDevice(Device device) =>
        [.. device.Pinout.Select(p => new PinPlan(p.Number, SectionNames.Electrode(device, p)))];
}
