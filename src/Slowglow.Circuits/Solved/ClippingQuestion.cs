using Slowglow.Circuits.Building;
using Slowglow.Circuits.Models.Diode;
using Slowglow.Circuits.Models.Transistor;
using Slowglow.Circuits.Models.Valve;

namespace Slowglow.Circuits.Solved;

/// <summary>
/// Which part ends the clean range: the drive is raised in small steps about the clean limit, and every element watched for the step at
/// which it first leaves its working range. What is out of it at half the limit already (a class B half, a switch) is no cause.
/// </summary>
internal sealed class ClippingQuestion(AskedWorld asked, Fixtures.PathFixture path, CancellationToken cancel)
{
    private const int Steps = 64;
    private const int Rungs = 16;
    private const double Lowest = 0.5;
    private const double Highest = 1.2;

    private readonly IReadOnlyDictionary<int, int> partners = new PushPull(asked).Partners();
    private readonly ElementAtRest[] rest =
    [
        .. asked.Circuit.Equations.Elements.Select(e => new ElementAtRest(e, asked.State.Slots, asked.State.Mean)),
    ];

    /// <summary>In the order in which they set in; empty when the path never reaches 5 %.</summary>
    public IReadOnlyList<ClippingCause> Ask()
    {
        var limit = asked.Limits.Of(asked.State, path, cancel).GeneratorVolts;
        return Slewing(limit) is { } slews ? [slews, .. Below(limit)] : Below(limit);
    }

    /// <summary>An op-amp that cannot follow a signal of 1 kHz that is clean otherwise.</summary>
    private ClippingCause? Slewing(double limit)
    {
        var at = new SlewQuestion(asked, path).At(SignalFollower.Hertz);
        return at is null || at.GeneratorVolts >= limit
            ? null
            : new(
                at.Part,
                at.Element,
                ClippingKind.Slews,
                at.GeneratorVolts,
                at.OutputVolts,
                $"{at.Element} cannot follow: its slew rate is used up"
            );
    }

    private IReadOnlyList<ClippingCause> Below(double limit)
    {
        if (!double.IsFinite(limit))
        {
            return [];
        }

        double[] drives =
        [
            .. Enumerable.Range(0, Rungs).Select(k => limit * Lowest * Math.Pow(Highest / Lowest, k / (Rungs - 1.0))),
        ];
        LoudSignal[] loud = [.. LoudSignal.At(asked, path, drives, cancel, Steps).OfType<LoudSignal>()];
        if (loud.Length < 2)
        {
            return [];
        }

        List<ClippingCause> causes = [.. Causes(loud).OrderBy(c => c.GeneratorVolts).ThenBy(c => Order(c.Kind))];
        if (causes.Count > 0 || loud[^1].GeneratorVolts < limit)
        {
            return causes;
        }

        var last = loud.First(s => s.GeneratorVolts >= limit);
        return new Curvature(asked, path, rest).Worst(last) is var (element, port)
            ? [Cause(element, Bends(rest[element], port), last)]
            : [];
    }

    /// <summary>What the nonlinear current of a port is called when it does its harm before any bound is passed.</summary>
    private static ClippingKind Bends(ElementAtRest element, int port) =>
        element.Element.Law switch
        {
            DiodeLaw => ClippingKind.Conducts,
            TriodeLaw or PentodeLaw or FieldEffectLaw when port == 1 => ClippingKind.GridCurrent,
            _ => ClippingKind.Curvature,
        };

    private IEnumerable<ClippingCause> Causes(LoudSignal[] loud)
    {
        var already = Outside(loud[0]);
        var seen = new HashSet<int>(already.Keys);
        foreach (var signal in loud.Skip(1))
        {
            foreach (var (element, kind) in Outside(signal))
            {
                if (seen.Add(element))
                {
                    yield return Cause(element, kind, signal);
                }
            }
        }
    }

    /// <summary>Every element that is outside its range at some instant, with the way that weighs most.</summary>
    private Dictionary<int, ClippingKind> Outside(LoudSignal signal)
    {
        var result = new Dictionary<int, ClippingKind>();
        for (var k = 0; k < signal.Count; k++)
        {
            var x = signal.Unknowns(k);
            for (var e = 0; e < rest.Length; e++)
            {
                var now = new ElementAtRest(rest[e].Element, signal.Slots, x);
                if (
                    WorkingRange.Of(now, rest[e]) is { } kind
                    && !(kind == ClippingKind.CutOff && partners.ContainsKey(e))
                    && (!result.TryGetValue(e, out var before) || Order(kind) < Order(before))
                )
                {
                    result[e] = kind;
                }
            }
        }

        return result;
    }

    /// <summary>Of two that set in together, the one that holds the output is the cause and the one starved by it is not.</summary>
    private static int Order(ClippingKind kind) =>
        kind switch
        {
            ClippingKind.PositiveLimit or ClippingKind.NegativeLimit or ClippingKind.CurrentLimit => 0,
            ClippingKind.Bottomed => 1,
            ClippingKind.GridCurrent => 2,
            ClippingKind.Conducts => 3,
            _ => 4,
        };

    private ClippingCause Cause(int element, ClippingKind kind, LoudSignal signal)
    {
        var name = asked.Parts.NameOfElement(element);
        return new(
            asked.Parts.OfElement(element),
            name,
            kind,
            signal.GeneratorVolts,
            signal.Harmonic(path.Out, 1).Magnitude,
            ClippingWords.Say(name, kind, rest[element])
        );
    }
}
