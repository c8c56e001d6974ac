using Slowglow.Circuits;
using Slowglow.Diagnosis.Answers;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Looks;

/// <summary>
/// How likely a story makes what was seen, smelt and felt. Heat comes from the watts of each part in the story's world, heaters from their
/// volts there; the rest has stated weights. Where a step lies and how sure an eye is: common practice, no source.
/// </summary>
internal sealed class LookEvidence(Knowledge knowledge, IReadOnlyList<Reading> looks)
{
    /// <summary>Chance of any look of trouble when the fault is none of those computed.</summary>
    private const double NoneChance = 0.2;

    /// <summary>An old scorch, a smudge, a wrong impression.</summary>
    private const double Slip = 0.03;

    /// <summary>Watts over rating at which one in two parts shows it, and feels too hot.</summary>
    private const double BurntRatio = 2;
    private const double HotRatio = 0.9;

    /// <summary>Rise over the healthy watts that is felt where no rating is known.</summary>
    private const double HotRise = 2.5;

    /// <summary>Anode watts over the limit at which the anode glows; volts over a capacitor's rating at which it bulges.</summary>
    private const double AnodeRatio = 1.4;
    private const double BulgeRatio = 1.15;

    private readonly HeaterGlow heaters = new(knowledge);

    public int Count => looks.Count;

    /// <summary>Log probability under none-of-these.</summary>
    public double LogNone => looks.Count * Math.Log(NoneChance);

    /// <summary>Solves what the heaters need.</summary>
    public void Ensure(IReadOnlyList<int> wanted, IProgress<double>? progress, CancellationToken cancel)
    {
        foreach (var look in looks.Where(l => l.Look is Look.Lit or Look.Dark))
        {
            heaters.Ensure(look, wanted, progress, cancel);
        }
    }

    /// <summary>Log probability of all looks under a story.</summary>
    public double Log(int hypothesis) => looks.Sum(l => Math.Log(Chance(l, hypothesis)));

    /// <summary>Probability of one look under a story; of two faults at once either may have left its mark.</summary>
    public double Chance(Reading look, int hypothesis)
    {
        if (knowledge.Hypotheses[hypothesis].Members is var (first, second))
        {
            var (a, b) = (Chance(look, first), Chance(look, second));
            return look.Look is Look.Fine or Look.Lit or Look.Cool ? Math.Min(a, b) : Math.Max(a, b);
        }
        var part = look.Probe.Where;
        return look.Look switch
        {
            Look.Burnt => Burnt(part, hypothesis),
            Look.Hot => Hot(part, hypothesis),
            Look.Cool => Math.Max(Slip, 1 - Hot(part, hypothesis)),
            Look.Lit => heaters.Lit(look, hypothesis),
            Look.Dark => 1 - heaters.Lit(look, hypothesis),
            Look.AnodeRed => Soft(SoftStep.At(Of(part, hypothesis)?.WattsRatio ?? double.NaN, AnodeRatio, 0.15)),
            Look.Bulged or Look.Leaking => Bulged(part, hypothesis),
            Look.Fine => 1 - Math.Max(Burnt(part, hypothesis), Bulged(part, hypothesis)),
            Look.Arcing => IsOwn(part, hypothesis) ? 0.5 : Slip,
            _ => IsOwn(part, hypothesis) ? 0.45 : 0.04,
        };
    }

    /// <summary>The figure that a look rests on in the story's world, in words; null where none is computed.</summary>
    public string? Figure(Reading look, int hypothesis) =>
        look.Look is Look.Lit or Look.Dark ? heaters.Figure(look, hypothesis)
        : look.Look is Look.Burnt or Look.Hot or Look.Cool or Look.AnodeRed
            ? HeatWords.Of(look.Probe.Where, Of(look.Probe.Where, hypothesis))
        : null;

    private double Burnt(string part, int h)
    {
        var heat = Soft(SoftStep.At(Of(part, h)?.WattsRatio ?? double.NaN, BurntRatio, 0.4));
        return IsOwn(part, h) ? Math.Max(heat, IsHard(h) ? 0.45 : 0.3) : heat;
    }

    private double Hot(string part, int h)
    {
        var (now, good) = (Of(part, h), Of(part, 0));
        var ratio = now?.WattsRatio ?? double.NaN;
        var rise = now is null || good is null ? double.NaN : now.Watts / Math.Max(good.Watts, 0.05);
        var heat = double.IsNaN(ratio)
            ? SoftStep.At(rise, HotRise, 0.5)
            : Math.Max(SoftStep.At(ratio, HotRatio, 0.2), ratio > 0.4 ? SoftStep.At(rise, HotRise, 0.5) : 0);
        return IsOwn(part, h) ? Math.Max(Soft(heat), 0.3) : Soft(heat);
    }

    private double Bulged(string part, int h)
    {
        if (!knowledge.Parts.TryGetValue(part, out var found) || found is not CapacitorPart)
        {
            return Slip;
        }
        var strain = Soft(SoftStep.At(Of(part, h)?.VoltsRatio ?? double.NaN, BulgeRatio, 0.1));
        return IsOwn(part, h) ? Math.Max(strain, 0.5) : strain;
    }

    /// <summary>Marks outlast the world that made them: behind a blown fuse the cause alone is asked.</summary>
    private PartStress? Of(string part, int h) =>
        knowledge.Stresses.Of(knowledge.Hypotheses.BeforeTheFuse(h)).GetValueOrDefault(part);

    private bool IsOwn(string part, int h) => knowledge.Hypotheses[h].Faults.Any(f => f.Part == part);

    private bool IsHard(int h) => knowledge.Hypotheses[h].Faults[0].Mode is FailureMode.Open or FailureMode.Short;

    private static double Soft(double chance) => Slip + (0.92 - Slip) * chance;
}
