using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Setups;

/// <summary>Reads one setup: how the bench stands, switches and controls by their names.</summary>
internal sealed class SetupReader(Sheet sheet, FindingList findings)
{
    private static readonly string[] Known =
    [
        "mains",
        "limiter",
        "power",
        "valves",
        "pulled",
        "load",
        "lifted",
        "input",
        "channel",
        "note",
    ];
    private readonly Dictionary<string, string> switches = [];
    private readonly Dictionary<string, double> controls = [];
    private string name = "";

    /// <summary>The setup; keys that make no sense are reported and left out.</summary>
    internal Setup Read(YamlEntry entry)
    {
        name = entry.Key.Text;
        var setup = new Setup { Name = name };
        switch (entry.Value)
        {
            case YamlScalar { Text: "" }:
                return setup;
            case YamlMap map:
                foreach (var key in new Keys(map, $"setup {name}", findings).All)
                {
                    setup = Key(setup, key);
                }

                return setup with
                {
                    Switches = switches,
                    Controls = controls,
                };
            default:
                findings.Error(
                    entry.Value.Place,
                    $"setup {name} holds {entry.Value.Kind}, not keys with values",
                    "write { mains: 230 V }"
                );
                return setup;
        }
    }

    private Setup Key(Setup setup, YamlEntry entry)
    {
        var text = (entry.Value as YamlScalar)?.Text ?? "";
        switch (entry.Key.Text)
        {
            case "mains":
                return text == "off"
                    ? setup with
                    {
                        PowerOff = true,
                    }
                    : setup with
                    {
                        MainsVolts = Figure(entry, Unit.Volt, 1000, "write 230 V") ?? setup.MainsVolts,
                    };
            case "limiter":
                return text is "out" or "none" or "off"
                    ? setup with
                    {
                        LimiterWatts = null,
                    }
                    : setup with
                    {
                        LimiterWatts = Figure(entry, Unit.Watt, 10_000, "write 40 W, or out"),
                    };
            case "power":
                return setup with { PowerOff = Choice(entry, "off", "on") ?? false };
            case "valves":
                return setup with { ValvesOut = Choice(entry, "out", "in") ?? false };
            case "pulled":
                return setup with { Pulled = [.. Names(entry).Where(Pullable).Select(w => w.Text)] };
            case "lifted":
                return setup with { Lifted = [.. Names(entry).Select(Leg).OfType<string>()] };
            case "load":
                return setup with
                {
                    LoadOhms = text is "none" or "open"
                        ? double.PositiveInfinity
                        : Figure(entry, Unit.Ohm, 1e12, "write 8 ohm, or none"),
                };
            case "input":
                return setup with { Input = Input(entry) };
            case "channel":
                return setup with { Channel = Channel(entry) };
            case "note":
                return setup;
            default:
                SwitchOrControl(entry);
                return setup;
        }
    }

    private double? Figure(YamlEntry entry, Unit unit, double most, string example)
    {
        if (
            entry.Value is YamlScalar text
            && QuantityText.TryRead(text.Text, unit, out var figure)
            && figure.Value >= 0
            && figure.Value <= most
        )
        {
            return figure.Value;
        }

        Wrong(entry, $"is no figure in {UnitNames.Of(unit)}", example);
        return null;
    }

    private bool? Choice(YamlEntry entry, string yes, string no)
    {
        switch ((entry.Value as YamlScalar)?.Text)
        {
            case var text when text == yes:
                return true;
            case var text when text == no:
                return false;
            default:
                Wrong(entry, $"is neither {yes} nor {no}", $"write {entry.Key.Text}: {yes}");
                return null;
        }
    }

    private InputState Input(YamlEntry entry)
    {
        switch ((entry.Value as YamlScalar)?.Text)
        {
            case "open" or "none":
                return InputState.Open;
            case "shorted" or "short":
                return InputState.Shorted;
            case "driven" or "generator":
                return InputState.Driven;
            default:
                Wrong(entry, "is neither open, shorted nor driven", "write input: shorted");
                return InputState.Open;
        }
    }

    private void Wrong(YamlEntry entry, string what, string remedy)
    {
        var said = entry.Value is YamlScalar text ? $"'{text.Text}'" : entry.Value.Kind;
        findings.Error(entry.Value.Place, $"setup {name}: {entry.Key.Text} {said} {what}", remedy);
    }

    private IEnumerable<Word> Names(YamlEntry entry)
    {
        switch (entry.Value)
        {
            case YamlList list:
                return list.Items.OfType<YamlScalar>().Select(s => s.AsWord);
            case YamlScalar { Text.Length: > 0 } text:
                return WordSplitter.Split(text).Select(w => w with { Text = w.Text.Trim(',') });
            default:
                Wrong(entry, "names no part", $"write {entry.Key.Text}: [R5]");
                return [];
        }
    }

    private Part? PartOf(Word word, string designator)
    {
        var part = sheet.Parts.FirstOrDefault(p => p.Designator == designator);
        if (part is null)
        {
            var near = NearestWords.Suggestion(designator, sheet.Parts.Select(p => p.Designator));
            findings.Error(word.Place, $"setup {name}: {designator} is not on this sheet", near);
        }

        return part;
    }

    private bool Pullable(Word word)
    {
        var part = PartOf(word, word.Text);
        if (part is not null and not ValvePart)
        {
            findings.Error(
                word.Place,
                $"setup {name}: {word.Text} is no valve and cannot be pulled",
                $"write lifted: [{word.Text}] for a lifted leg",
                word.Text
            );
        }

        return part is ValvePart;
    }

    /// <summary>"R5" or "R5.2", electrodes turned into pin numbers; null after an error.</summary>
    private string? Leg(Word word)
    {
        var designator = NetWord.PartOf(word.Text);
        if (PartOf(word, designator) is not { } part)
        {
            return null;
        }

        if (designator == word.Text)
        {
            return designator;
        }

        var pins = part.Pins.Select(p => new PinPlan(p.Number, p.Electrode)).ToList();
        var pin = PinNames.Find(pins, word.Text[(designator.Length + 1)..]);
        if (pin is null)
        {
            findings.Error(
                word.Place,
                $"setup {name}: {designator} has no pin '{word.Text[(designator.Length + 1)..]}'",
                "its pins: " + PinNames.List(pins),
                designator
            );
        }

        return pin is null ? null : $"{designator}.{pin.Number}";
    }

    private string? Channel(YamlEntry entry)
    {
        var text = (entry.Value as YamlScalar)?.Text;
        if (sheet.Signals.Any(s => s.Name == text))
        {
            return text;
        }

        Wrong(
            entry,
            "is no channel of this sheet",
            sheet.Signals.Count == 0
                ? "the sheet has no signal:"
                : "channels: " + string.Join(", ", sheet.Signals.Select(s => s.Name))
        );
        return null;
    }

    private void SwitchOrControl(YamlEntry entry)
    {
        var key = entry.Key.Text;
        var text = (entry.Value as YamlScalar)?.Text ?? "";
        if (sheet.Switches.FirstOrDefault(s => s.Name == key) is { } found)
        {
            if (found.Positions.Contains(text))
            {
                switches[key] = text;
            }
            else
            {
                Wrong(entry, "is no position of that switch", "positions: " + string.Join(", ", found.Positions));
            }
        }
        else if (sheet.Controls.Any(c => c.Name == key))
        {
            if (RotationText.TryRead(text, out var rotation))
            {
                controls[key] = rotation;
            }
            else
            {
                Wrong(entry, "is no rotation", "write 0 % to 100 %");
            }
        }
        else
        {
            var names = Known.Concat(sheet.Switches.Select(s => s.Name)).Concat(sheet.Controls.Select(c => c.Name)).ToList();
            var near = NearestWords.Suggestion(key, names);
            findings.Error(
                entry.Key.Place,
                $"setup {name}: '{key}' is neither a key of setups nor a switch or control of this sheet",
                near.Length > 0 ? near : "keys here: " + string.Join(", ", names)
            );
        }
    }
}
