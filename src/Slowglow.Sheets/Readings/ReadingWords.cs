using Slowglow.Quantities;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets.Readings;

/// <summary>Sorts the words of a reading: figure, kind, frequency, setup, meter.</summary>
internal sealed class ReadingWords
{
    internal Quantity? Value { get; private set; }
    internal Place ValuePlace { get; private set; }
    internal bool Overload { get; private set; }
    internal bool Unstable { get; private set; }

    /// <summary>Above or below, when the figure only bounds.</summary>
    internal MeterSaid? Bound { get; init; }

    internal MeterSaid Said =>
        Overload ? MeterSaid.Overload
        : Unstable ? MeterSaid.Unstable
        : Bound ?? MeterSaid.Value;
    internal ProbeKind? Kind { get; private set; }
    internal bool Ripple { get; private set; }
    internal double Frequency { get; private set; }
    internal Word? Setup { get; private set; }
    internal Word? Meter { get; private set; }
    internal bool IsBroken { get; private set; }

    /// <summary>
    /// Takes what it understands out of the words. Left of the '=' only kinds are taken (the rest says where);
    /// on the right everything must be understood.
    /// </summary>
    internal void Take(List<Word> words, bool valueSide, FindingList findings)
    {
        for (var i = 0; i < words.Count; i++)
        {
            var taken = TakeKind(words[i], i > 0 || valueSide);
            if (taken == 0 && valueSide)
            {
                taken = TakeNamed(words, i, findings);
                taken = taken > 0 ? taken : TakeValue(words, i);
                if (taken == 0)
                {
                    findings.Error(
                        words[i].Place,
                        $"'{words[i].Text}' is not understood in a reading",
                        "after the '=' come the figure (or OL, unstable, > or < before it), then dc, ac, ripple, ohm, diode or a frequency, then on SETUP and meter CLASS"
                    );
                    IsBroken = true;
                    taken = 1;
                }
            }

            if (taken > 0)
            {
                words.RemoveRange(i, Math.Min(taken, words.Count - i));
                i--;
            }
        }

        // "ac 1kHz" is a level: the frequency says more than the range.
        Kind = Frequency > 0 && Kind is null or ProbeKind.Ac && Frequency > 0 ? ProbeKind.Level : Kind;
    }

    private int TakeKind(Word word, bool allowed)
    {
        if (!allowed)
        {
            return 0;
        }

        ProbeKind? kind = word.Text.ToLowerInvariant() switch
        {
            "dc" => ProbeKind.Dc,
            "ac" or "rms" => ProbeKind.Ac,
            "ripple" => ProbeKind.Ac,
            "ohm" or "ohms" or "\u03c9" or "\u2126" => ProbeKind.Ohm,
            "diode" => ProbeKind.Diode,
            _ => null,
        };
        if (kind is not null)
        {
            Ripple |= word.Text.Equals("ripple", StringComparison.OrdinalIgnoreCase);
            Kind = kind;
            return 1;
        }

        if (QuantityText.TryRead(word.Text, out var figure) && figure.Unit == Unit.Hertz && figure.Value > 0)
        {
            Frequency = figure.Value;
            return 1;
        }

        return 0;
    }

    private int TakeNamed(List<Word> words, int at, FindingList findings)
    {
        var text = words[at].Text;
        if (
            text.ToLowerInvariant()
            is "unstable"
                or "unsteady"
                or "wandering"
                or "wanders"
                or "drifting"
                or "drifts"
                or "jumping"
                or "jumps"
        )
        {
            Unstable = true;
            return 1;
        }

        if (text is not ("on" or "meter"))
        {
            return 0;
        }

        if (at + 1 >= words.Count)
        {
            findings.Error(
                words[at].Place,
                $"'{text}' is not followed by a name",
                text == "on" ? "write on SETUP" : "write meter CLASS"
            );
            IsBroken = true;
            return 1;
        }

        if (text == "on")
        {
            Setup = words[at + 1];
        }
        else
        {
            Meter = words[at + 1];
        }

        return 2;
    }

    private int TakeValue(List<Word> words, int at)
    {
        if (Value is not null || Overload)
        {
            return 0;
        }

        var text = words[at].Text;
        if (text.ToUpperInvariant() is "OL" or "O.L" or "O.L." or "0L" or "OVERLOAD")
        {
            (Overload, ValuePlace) = (true, words[at].Place);
            return 1;
        }

        var minus = text is "-" && at + 1 < words.Count;
        if (!QuantityText.TryRead(minus ? "-" + words[at + 1].Text : text, out var figure))
        {
            return 0;
        }

        (Value, ValuePlace) = (figure, words[at].Place);
        if (figure.Unit == Unit.Volt && (text.EndsWith("ac", StringComparison.OrdinalIgnoreCase) || text.EndsWith('~')))
        {
            Kind ??= ProbeKind.Ac;
        }

        return minus ? 2 : 1;
    }
}
