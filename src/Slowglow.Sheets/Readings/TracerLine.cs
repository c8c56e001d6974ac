using Slowglow.Sheets.Setups;

namespace Slowglow.Sheets.Readings;

/// <summary>Reads a signal tracer's notes: <c>signal at V1.6, none at TOP</c>, <c>weak signal at OUT on loud</c>.</summary>
internal sealed class TracerLine(Sheet sheet, IReadOnlyList<Setup> setups, FindingList findings)
{
    /// <summary>Hertz at which levels are compared: the generator's usual tone.</summary>
    private const double Hertz = 1000;
    private const string Form = "write signal at V1.6, none at TOP";

    private static readonly Dictionary<string, MeterSaid> Openings = new(StringComparer.OrdinalIgnoreCase)
    {
        ["signal"] = MeterSaid.Signal,
        ["good"] = MeterSaid.Signal,
        ["strong"] = MeterSaid.Signal,
        ["weak"] = MeterSaid.WeakSignal,
        ["faint"] = MeterSaid.WeakSignal,
        ["low"] = MeterSaid.WeakSignal,
        ["no"] = MeterSaid.NoSignal,
        ["none"] = MeterSaid.NoSignal,
        ["nothing"] = MeterSaid.NoSignal,
    };

    internal static bool IsOne(IReadOnlyList<Word> words) =>
        words.Count > 2
        && Openings.ContainsKey(words[0].Text)
        && words.Any(w => w.Text.Equals("signal", StringComparison.OrdinalIgnoreCase))
        && words.Any(w => w.Text.Equals("at", StringComparison.OrdinalIgnoreCase));

    /// <summary>One reading for each place, chained; null after an error.</summary>
    internal Reading? Read(List<Word> words, string text, Place place)
    {
        if (sheet.Signals.Count == 0)
        {
            findings.Error(
                place,
                "a tracer needs to know where the signal goes in",
                "add signal: { in: IN, out: OUT } to the sheet"
            );
            return null;
        }

        if (SetupOf(words) is not { } setup)
        {
            return null;
        }

        if (setup.PowerOff)
        {
            findings.Error(place, $"setup '{setup.Name}' has the power off: there is no signal to trace", "name another setup");
            return null;
        }

        var found = new List<(Probe Probe, MeterSaid Said)>();
        var said = MeterSaid.Signal;
        foreach (var clause in Clauses(words))
        {
            if (Clause(clause, ref said, place) is not { } probe)
            {
                return null;
            }
            found.Add((probe, said));
        }

        return Chain(found, setup, text, place);
    }

    private static Reading? Chain(List<(Probe Probe, MeterSaid Said)> found, Setup setup, string text, Place place)
    {
        Reading? chain = null;
        for (var i = found.Count - 1; i >= 0; i--)
        {
            chain = new Reading(found[i].Probe, setup, found[i].Said, double.NaN, MeterClass.Handheld, text, place)
            {
                Also = chain,
            };
        }
        return chain;
    }

    /// <summary>"none at TOP", or a place alone, of which the same is said as before.</summary>
    private Probe? Clause(List<Word> clause, ref MeterSaid said, Place place)
    {
        var at = clause.FindIndex(w => w.Text.Equals("at", StringComparison.OrdinalIgnoreCase));
        foreach (var word in clause.Take(Math.Max(at, 0)))
        {
            if (
                Openings.TryGetValue(word.Text, out var opening)
                && !word.Text.Equals("signal", StringComparison.OrdinalIgnoreCase)
            )
            {
                said = opening;
            }
            else if (word.Text.Equals("signal", StringComparison.OrdinalIgnoreCase))
            {
                said = clause[0].Text.Equals("signal", StringComparison.OrdinalIgnoreCase) ? MeterSaid.Signal : said;
            }
            else
            {
                findings.Error(word.Place, $"'{word.Text}' is not understood in a tracer's note", Form);
                return null;
            }
        }

        var where = clause.Skip(at + 1).ToList();
        var probe = where.Count == 0 ? null : new ProbePlace(sheet, findings).Read(where, place);
        if (probe is { IsInlet: true } || where.Count == 0)
        {
            findings.Error(place, "the note does not say where the signal was looked for", Form);
            return null;
        }
        return probe is null ? null : probe with { Kind = ProbeKind.Level, Frequency = Hertz };
    }

    private static IEnumerable<List<Word>> Clauses(List<Word> words)
    {
        var clause = new List<Word>();
        foreach (var word in words)
        {
            var ends = word.Text.EndsWith(',') || word.Text.EndsWith(';');
            var joins = word.Text is "and" or "but" or "," or ";";
            var bare = word.Text.TrimEnd(',', ';', '.');
            if (!joins && bare.Length > 0)
            {
                clause.Add(word with { Text = bare });
            }
            if ((ends || joins) && clause.Count > 0)
            {
                yield return clause;
                clause = [];
            }
        }
        if (clause.Count > 0)
        {
            yield return clause;
        }
    }

    private Setup? SetupOf(List<Word> words)
    {
        var on = words.FindIndex(w => w.Text == "on");
        if (on < 0)
        {
            return setups.Count > 0 ? setups[0] : Setup.Default;
        }

        var name = on + 1 < words.Count ? words[on + 1].Text : "";
        if (setups.FirstOrDefault(s => s.Name == name) is { } found)
        {
            words.RemoveRange(on, 2);
            return found;
        }
        findings.Error(
            words[on].Place,
            $"there is no setup '{name}'",
            "setups here: " + string.Join(", ", setups.Select(s => s.Name))
        );
        return null;
    }
}
