using Slowglow.Circuits;
using Slowglow.Diagnosis.Answers;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Source;
using Slowglow.Quantities;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Looks;

/// <summary>Whether a heater or lamp glows: by its volts in the story's world against those of the healthy unit.</summary>
internal sealed class HeaterGlow(Knowledge knowledge)
{
    /// <summary>Share of the healthy volts at which one in two eyes calls it lit: common practice, no source.</summary>
    private const double HalfSeen = 0.45;
    private const double Sure = 0.99;

    /// <summary>Chance that it glows when the sheet does not draw its heater.</summary>
    private const double Undrawn = 0.9;

    /// <summary>Volts below which no heater is fed.</summary>
    private const double LeastVolts = 0.5;

    private readonly Dictionary<string, (AnswerColumn Dc, AnswerColumn Ac)?> columns = [];

    public void Ensure(Reading look, IReadOnlyList<int> wanted, IProgress<double>? progress, CancellationToken cancel)
    {
        if (ColumnsOf(look) is var (dc, ac))
        {
            dc.Block.Ensure(wanted.Append(0), progress, cancel);
            ac.Block.Ensure(wanted.Append(0), progress, cancel);
        }
    }

    /// <summary>Probability that it is seen to glow.</summary>
    public double Lit(Reading look, int h)
    {
        var own = knowledge.Hypotheses[h].Faults.Any(f => f.Part == look.Probe.Where && IsOut(f));
        if (own)
        {
            return 1 - Sure;
        }
        if (Volts(look, h) is not { } volts || Volts(look, 0) is not { } healthy || healthy < LeastVolts)
        {
            return Undrawn;
        }
        var seen = 1 / (1 + Math.Exp(-(volts / healthy - HalfSeen) / 0.07));
        return 1 - Sure + (2 * Sure - 1) * seen;
    }

    public string? Figure(Reading look, int h) =>
        Volts(look, h) is { } volts && Volts(look, 0) is { } healthy && healthy >= LeastVolts
            ? $"{look.Probe.Where} would have {Engineering.Format(volts, "V", 2)} of its {Engineering.Format(healthy, "V", 2)}"
            : null;

    private static bool IsOut(Fault fault) =>
        fault is { Mode: FailureMode.Open, Where: "heater" or "" } or { Mode: FailureMode.Dead, Where: "" };

    /// <summary>Rms of dc and ac together; null where it is not drawn or gives no figure.</summary>
    private double? Volts(Reading look, int h)
    {
        if (ColumnsOf(look) is not var (dc, ac) || !dc.Block.Has(h) || !ac.Block.Has(h))
        {
            return null;
        }
        var (d, a) = (dc.Block.Alone(h, dc.Index), ac.Block.Alone(h, ac.Index));
        if (d.Kind == AnswerKind.Unsettled || a.Kind == AnswerKind.Unsettled)
        {
            return null;
        }
        var steady = d.HasFigure ? d.Mean : 0;
        var moving = a.HasFigure ? Likelihood.Scale.Of(ac.Probe).From(a.Mean) : 0;
        return Math.Sqrt(steady * steady + moving * moving);
    }

    private (AnswerColumn Dc, AnswerColumn Ac)? ColumnsOf(Reading look)
    {
        var key = look.Probe.Where + "|" + SetupKey.Of(look.Setup);
        if (!columns.TryGetValue(key, out var found))
        {
            found =
                Ends(look.Probe.Where) is var (red, black) && !look.Setup.PowerOff
                    ? (Column(look, red, black, ProbeKind.Dc), Column(look, red, black, ProbeKind.Ac))
                    : null;
            columns.Add(key, found);
        }
        return found;
    }

    private AnswerColumn Column(Reading look, string red, string black, ProbeKind kind) =>
        knowledge.Answers.ColumnOf(look.Setup, new(look.Probe.Where, red, black, kind), MeterClass.Handheld);

    /// <summary>The ends of the heater, or of the lamp; a tap counts as an end.</summary>
    private (string Red, string Black)? Ends(string name)
    {
        if (!knowledge.Parts.TryGetValue(name, out var part))
        {
            return null;
        }
        string[] nets =
        [
            .. part.Pins.Where(p => part.Pins.Count == 2 || p.Electrode.StartsWith('h')).Select(p => p.Net).Distinct(),
        ];
        return nets.Length < 2 ? null : (nets[0], nets[^1]);
    }
}
