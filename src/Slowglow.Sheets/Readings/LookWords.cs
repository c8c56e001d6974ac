using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Lamp;
using Slowglow.Sheets.Parts.Valve;

namespace Slowglow.Sheets.Readings;

/// <summary>The phrases for what is seen, smelt and felt, and the parts they can be said of.</summary>
internal static class LookWords
{
    private static readonly HashSet<string> Fillers =
    [
        "is",
        "are",
        "was",
        "looks",
        "look",
        "feels",
        "runs",
        "gets",
        "seems",
        "of",
        "the",
        "a",
        "an",
        "very",
        "too",
        "slightly",
        "and",
        "its",
        "has",
        "at",
        "on",
        "in",
    ];

    private static readonly Dictionary<string, Look> Phrases = Make();

    /// <summary>The look that a phrase stands for, fillers and case aside; null when it is none.</summary>
    internal static Look? Of(IEnumerable<string> words)
    {
        var phrase = string.Join(
            ' ',
            words
                .Select(w => w.Trim(',', '.', ';', '!', '(', ')').ToLowerInvariant())
                .Where(w => w.Length > 0 && !Fillers.Contains(w))
        );
        return Phrases.TryGetValue(phrase, out var look) ? look : null;
    }

    /// <summary>In one word, as shown.</summary>
    internal static string Say(Look look) =>
        look switch
        {
            Look.Lit => "glowing",
            Look.AnodeRed => "anode red",
            Look.Loose => "dry joint",
            Look.Fine => "looks fine",
            _ => look.ToString().ToLowerInvariant(),
        };

    /// <summary>Why a look cannot be said of a part, or null when it can.</summary>
    internal static string? Refuses(Look look, Part part) =>
        look switch
        {
            Look.Lit or Look.Dark when part is not (ValvePart or LampPart) =>
                $"{part.Designator} is neither a valve nor a lamp: it has nothing that glows",
            Look.AnodeRed when part is not ValvePart => $"{part.Designator} is no valve: it has no anode",
            Look.Bulged when part is not CapacitorPart => $"{part.Designator} is no capacitor: it has no can to bulge",
            _ => null,
        };

    private static Dictionary<string, Look> Make()
    {
        var phrases = new Dictionary<string, Look>();
        Add(
            Look.Burnt,
            "burnt",
            "burned",
            "burnt out",
            "scorched",
            "charred",
            "browned",
            "brown",
            "blackened",
            "black",
            "discoloured"
        );
        Add(Look.Burnt, "discolored", "cooked", "smells", "smells burnt", "burnt smell", "smell", "smoking", "smokes", "smoke");
        Add(
            Look.Hot,
            "hot",
            "overheats",
            "overheating",
            "burning hot",
            "scalding",
            "runs hot",
            "hot touch",
            "hot to touch",
            "red hot"
        );
        Add(Look.Cool, "cool", "cold", "stone cold", "not warm", "not hot", "cold touch");
        Add(Look.Lit, "glowing", "glows", "lit", "heater glowing", "glowing heater", "heater glows", "heater lit", "heater on");
        Add(Look.Lit, "lights", "lights up", "filament lit", "filament glowing", "glow");
        Add(
            Look.Dark,
            "dark",
            "unlit",
            "heater dark",
            "dark heater",
            "heater out",
            "not glowing",
            "not lit",
            "no glow",
            "heater not lit"
        );
        Add(Look.Dark, "heater not glowing", "heater off", "filament dark", "does not light", "does not glow", "out");
        Add(
            Look.AnodeRed,
            "anode red",
            "red anode",
            "red plate",
            "plate red",
            "redplating",
            "red-plating",
            "anode glows red",
            "glows red"
        );
        Add(Look.AnodeRed, "red hot anode", "anode red hot", "cherry red", "plate glows red", "anode glowing", "plate glowing");
        Add(Look.Bulged, "bulged", "bulging", "bulges", "swollen", "domed", "blown top", "vented");
        Add(Look.Leaking, "leaking", "leaks", "leaked", "wet", "leaking electrolyte", "electrolyte leaking", "leaking wax");
        Add(Look.Cracked, "cracked", "split", "chipped", "broken", "crack");
        Add(
            Look.Loose,
            "dry joint",
            "cracked joint",
            "poor joint",
            "bad joint",
            "loose",
            "corroded",
            "dirty",
            "joint dry",
            "joint cracked"
        );
        Add(Look.Arcing, "arcing", "arcs", "sparks", "sparking", "flashing", "flashes over", "flashover", "spark");
        Add(
            Look.Fine,
            "fine",
            "ok",
            "okay",
            "good",
            "clean",
            "normal",
            "looks fine",
            "nothing seen",
            "warm",
            "not burnt",
            "not bulged"
        );
        return phrases;

        void Add(Look look, params string[] words)
        {
            foreach (var word in words)
            {
                phrases.TryAdd(word, look);
            }
        }
    }
}
