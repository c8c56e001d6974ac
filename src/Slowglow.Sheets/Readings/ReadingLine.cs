using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;
using Slowglow.Sheets.Setups;
using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Readings;

/// <summary>
/// Reads <c>WHERE = VALUE [KIND] [on SETUP] [meter CLASS]</c>, bounds (<c>WHERE &gt; VALUE</c>), and hands tracer's notes and looks on.
/// </summary>
internal sealed class ReadingLine(Sheet sheet, IReadOnlyList<Setup> setups, FindingList findings)
{
    private const string Form = "write WHERE = VALUE, e.g. V1.6 = 62 V, HT1 = 6 V ripple, R5 = 100k ohm on cold";

    internal Reading? Read(YamlScalar text)
    {
        var (line, called) = MistakeWord.Cut(text);
        var sign = BoundSign.In(line.Text);
        var read = sign.At < 0 ? WithoutSign(line, text.Text) : Figure(line, sign, text.Text);
        return called ? Mistaken(read) : read;
    }

    private static Reading? Mistaken(Reading? read) =>
        read is null ? null : read with { IsMistake = true, Also = Mistaken(read.Also) };

    /// <summary>A tracer's note or a look; an error when it is neither.</summary>
    private Reading? WithoutSign(YamlScalar line, string whole)
    {
        var words = WordSplitter.Split(line);
        if (TracerLine.IsOne(words))
        {
            return new TracerLine(sheet, setups, findings).Read(words, whole, line.Place);
        }

        var look = new LookLine(sheet, setups, findings);
        if (look.IsOne(words))
        {
            return look.Read(words, whole, line.Place);
        }

        findings.Error(line.Place, $"'{line.Text}' has no '='", Form);
        return null;
    }

    private Reading? Figure(YamlScalar text, BoundSign sign, string whole)
    {
        var where = WordSplitter.Split(new YamlScalar(text.Text[..sign.At], text.Place, text.OneLine));
        var said = WordSplitter.JoinUnits(
            WordSplitter.Split(new YamlScalar(text.Text[sign.ValueAt..], text.At(sign.ValueAt), text.OneLine))
        );
        var words = new ReadingWords { Bound = sign.Bound };
        words.Take(where, false, findings);
        var place = new ProbePlace(sheet, findings).Read(where, text.Place);
        words.Take(said, true, findings);
        var setup = SetupOf(words.Setup);
        var meter = MeterOf(words.Meter);
        if (place is null || setup is null || meter is null || words.IsBroken)
        {
            return null;
        }

        return Whole(text, place, words, setup, meter) is { } reading ? reading with { Text = whole } : null;
    }

    internal Probe? ReadProbe(YamlScalar text)
    {
        var words = new ReadingWords();
        var where = WordSplitter.JoinUnits(WordSplitter.Split(text));
        words.Take(where, false, findings);
        var place = new ProbePlace(sheet, findings).Read(where, text.Place);
        if (place is null || words.IsBroken)
        {
            return null;
        }

        var kind = words.Kind ?? (place.IsInlet ? ProbeKind.Ac : ProbeKind.Dc);
        return
            ProbeRules.InletOnlyAc(place, kind, text.Place, findings)
            && ProbeRules.LevelNeedsSignal(sheet, kind, text.Place, findings)
            ? place with
            {
                Kind = kind,
                Frequency = words.Frequency,
                SaidAsRipple = words.Ripple,
            }
            : null;
    }

    private Reading? Whole(YamlScalar text, Probe place, ReadingWords words, Setup setup, MeterClass meter)
    {
        if (words.Value is not { } value)
        {
            if (!words.Overload && !words.Unstable)
            {
                findings.Error(text.Place, $"'{text.Text}' has no figure after the '='", Form);
                return null;
            }

            value = new Quantity(double.NaN, Unit.None);
        }

        var kind = words.Kind ?? ProbeRules.Usual(place, value.Unit, setup);
        var probe = place with { Kind = kind, Frequency = words.Frequency, SaidAsRipple = words.Ripple };
        var valuePlace = words.ValuePlace;
        if (!ProbeRules.Check(probe, value, setup, sheet, valuePlace, findings))
        {
            return null;
        }

        return new Reading(probe, setup, words.Said, value.Value, meter, text.Text, text.Place);
    }

    private Setup? SetupOf(Word? word)
    {
        var fallback = setups.Count > 0 ? setups[0] : Setup.Default;
        if (word is not { } name)
        {
            return fallback;
        }

        var found = setups.FirstOrDefault(s => s.Name == name.Text);
        if (found is null)
        {
            var near = NearestWords.Suggestion(name.Text, setups.Select(s => s.Name));
            findings.Error(
                name.Place,
                $"there is no setup '{name.Text}'",
                near.Length > 0 ? near : "setups here: " + string.Join(", ", setups.Select(s => s.Name))
            );
        }

        return found;
    }

    private MeterClass? MeterOf(Word? word)
    {
        if (word is not { } name)
        {
            return MeterClass.Handheld;
        }

        var found = MeterClass.All.FirstOrDefault(m => string.Equals(m.Name, name.Text, StringComparison.OrdinalIgnoreCase));
        if (found is null)
        {
            findings.Error(
                name.Place,
                $"there is no class of meter '{name.Text}'",
                "classes: " + string.Join(", ", MeterClass.All.Select(m => m.Name))
            );
        }

        return found;
    }
}
