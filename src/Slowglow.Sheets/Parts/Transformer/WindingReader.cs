using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;
using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Parts.Transformer;

/// <summary>Reads the entries under <c>windings:</c>.</summary>
internal sealed class WindingReader(string designator, bool output, FindingList findings)
{
    private double share = double.NaN;
    private static readonly string[] Keys =
    [
        "pins",
        "volts",
        "amps",
        "ohms",
        "impedance",
        "turns",
        "ratio",
        "taps",
        "va",
        "watts",
        "note",
    ];

    internal List<WindingPlan> Read(YamlMap map)
    {
        var windings = new List<WindingPlan>();
        foreach (var entry in map.Entries)
        {
            if (windings.Exists(w => w.Name == entry.Key.Text))
            {
                findings.Error(
                    entry.Key.Place,
                    $"{designator} has two windings '{entry.Key.Text}'",
                    "give each a name of its own",
                    designator
                );
            }
            else if (entry.Value is not YamlMap keys)
            {
                findings.Error(
                    entry.Value.Place,
                    $"{designator}: winding {entry.Key.Text} holds {entry.Value.Kind}",
                    "write { pins: 1-2, volts: 230 V }",
                    designator
                );
            }
            else if (One(entry.Key, keys, windings.Count == 0) is { } winding && DistinctPins(winding, windings))
            {
                windings.Add(winding);
            }
        }

        return windings;
    }

    private bool DistinctPins(WindingPlan winding, List<WindingPlan> others)
    {
        var twice = winding.Pins.FirstOrDefault(p =>
            winding.Pins.Count(q => q == p) > 1 || others.Exists(o => o.Pins.Contains(p))
        );
        if (twice is not null)
        {
            findings.Error(
                winding.Place,
                $"{designator}: pin {twice} stands twice in the windings",
                "each pin belongs to one winding",
                designator
            );
        }

        return twice is null;
    }

    private WindingPlan? One(YamlScalar name, YamlMap keys, bool first)
    {
        var winding = new WindingPlan
        {
            Name = name.Text,
            Place = name.Place,
            IsPrimary = first || name.Text.StartsWith('P') || name.Text.StartsWith('p'),
        };
        var good = true;
        share = double.NaN;
        foreach (var entry in keys.Entries)
        {
            good &= Key(winding, entry);
        }

        if (winding.Pins.Count < 2)
        {
            if (good)
            {
                findings.Error(
                    name.Place,
                    $"{designator}: winding {name.Text} has no pins",
                    "write pins: 1-2, from start to finish",
                    designator
                );
            }

            return null;
        }

        return good && Tapped(winding) && Sections(winding) ? winding : null;
    }

    private bool Key(WindingPlan winding, YamlEntry entry)
    {
        switch (entry.Key.Text)
        {
            case "pins":
                winding.Pins = PinsOf(entry.Value);
                return winding.Pins.Count >= 2 || Bad(entry, "is no run of pins", "write pins: 1-2, from start to finish");
            case "volts":
                winding.Sections = SectionText.Read(Text(entry.Value), Unit.Volt) ?? [];
                return winding.Sections.Count > 0 || Bad(entry, "is no figure in volts", "write 230 V, or 12-0-12 V");
            case "impedance":
                winding.Sections = [.. SectionText.ReadImpedance(Text(entry.Value))];
                return winding.Sections.Count > 0 || Bad(entry, "is no figure in ohms", "write 8 ohm, or 0-4-8-16 ohm");
            case "turns" or "ratio":
                winding.Sections = SectionText.Read(Text(entry.Value), Unit.None) ?? [];
                return winding.Sections.Count > 0 || Bad(entry, "is no number of turns", "write turns: 25");
            case "taps" when output:
                return Figure(entry, Unit.Percent, v => share = v);
            case "amps":
                return Figure(entry, Unit.Ampere, v => winding.Amps = v);
            case "ohms":
                return Figure(entry, Unit.Ohm, v => winding.Ohms = v);
            case "va" or "watts":
                return Figure(entry, entry.Key.Text == "va" ? Unit.VoltAmpere : Unit.Watt, _ => { });
            case "note":
                return true;
            default:
                var near = NearestWords.Suggestion(entry.Key.Text, Keys);
                findings.Error(
                    entry.Key.Place,
                    $"{designator}: winding {winding.Name} has no use for '{entry.Key.Text}'",
                    near.Length > 0 ? near : "keys here: pins, volts, amps, ohms",
                    designator
                );
                return true;
        }
    }

    private bool Figure(YamlEntry entry, Unit unit, Action<double> give)
    {
        if (entry.Value is YamlScalar text && QuantityText.TryRead(text.Text, unit, out var figure) && figure.Value > 0)
        {
            give(figure.Value);
            return true;
        }

        return Bad(entry, $"is no figure in {UnitNames.Of(unit)}", UnitNames.Example(unit));
    }

    private bool Bad(YamlEntry entry, string what, string remedy)
    {
        findings.Error(entry.Value.Place, $"{designator}: {entry.Key.Text} '{Text(entry.Value)}' {what}", remedy, designator);
        return false;
    }

    private static string Text(YamlNode node) =>
        node switch
        {
            YamlScalar scalar => scalar.Text,
            YamlList list => string.Join("-", list.Items.OfType<YamlScalar>().Select(s => s.Text)),
            _ => "",
        };

    private static IReadOnlyList<string> PinsOf(YamlNode node) =>
        node is YamlList list
            ? [.. list.Items.OfType<YamlScalar>().Select(s => s.Text)]
            : Text(node).Split(['-', ' ', ','], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    /// <summary>Screen taps at a share of the turns, counted from the supply: in both halves of five pins, or in the one of three.</summary>
    private bool Tapped(WindingPlan winding)
    {
        if (double.IsNaN(share))
        {
            return true;
        }

        if (share is > 0 and < 1 && winding.Pins.Count is 3 or 5 && winding.Sections.Count == 0)
        {
            winding.Sections = winding.Pins.Count == 3 ? [1 - share, share] : [1 - share, share, share, 1 - share];
            winding.IsShapeOnly = true;
            return true;
        }

        findings.Error(
            winding.Place,
            $"{designator}: the taps of winding {winding.Name} do not go with its pins",
            "write pins: 1-2-3-4-5 (anode, tap, supply, tap, anode) with taps: 43 %, or pins: 1-2-3 for a single valve",
            designator
        );
        return false;
    }

    private bool Sections(WindingPlan winding)
    {
        var sections = winding.Pins.Count - 1;
        if (winding.Sections.Count == 0)
        {
            return output || Missing(winding);
        }

        if (winding.Sections.Count == 1 && sections > 1)
        {
            winding.Sections = [.. Enumerable.Repeat(winding.Sections[0] / sections, sections)];
            findings.Note(
                winding.Place,
                $"{designator}: the volts of winding {winding.Name} are split evenly over its taps",
                "write them as on the drawing, e.g. 12-0-12 V",
                designator
            );
        }

        if (winding.Sections.Count == sections && winding.Sections.All(v => v > 0))
        {
            return true;
        }

        findings.Error(
            winding.Place,
            $"{designator}: winding {winding.Name} has {winding.Pins.Count} pins, but its volts are for {winding.Sections.Count + 1}",
            "three pins go with 12-0-12 V, two with 12 V",
            designator
        );
        return false;
    }

    private bool Missing(WindingPlan winding)
    {
        findings.Error(winding.Place, $"{designator}: winding {winding.Name} has no volts", "write volts: 230 V", designator);
        return false;
    }
}
