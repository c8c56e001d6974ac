using Slowglow.Circuits;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Source;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Answers;

/// <summary>All answers had so far, by setup. One block a setup for the probes that could be proposed, more for readings outside them.</summary>
internal sealed class AnswerStore(IWorldSource source, HypothesisList hypotheses, double reach)
{
    /// <summary>A DC spread wider than this part of the unit's largest voltage says only that the figure is unknown.</summary>
    private const double WidestDcShare = 0.3;

    private readonly Dictionary<string, AnswerBlock> candidates = [];
    private readonly Dictionary<
        (string Setup, MeterClass Meter, string Red, string Black, ProbeKind, double),
        AnswerBlock
    > single = [];

    /// <summary>Largest DC volts of the healthy unit; at least a few volts.</summary>
    public double Reach => reach;

    /// <summary>The block of the probes worth proposing in a setup; the list is made at the first call.</summary>
    public AnswerBlock Candidates(Setup setup, Func<IReadOnlyList<Probe>> probes)
    {
        var key = SetupKey.Of(setup);
        if (!candidates.TryGetValue(key, out var block))
        {
            block = new(source, hypotheses, setup, probes(), MeterClass.Handheld, WidestDcShare * reach);
            candidates.Add(key, block);
        }
        return block;
    }

    /// <summary>Where the answers to a reading's probe are kept.</summary>
    public AnswerColumn ColumnOf(Setup setup, Probe probe, MeterClass meter)
    {
        if (meter == MeterClass.Handheld && candidates.TryGetValue(SetupKey.Of(setup), out var known))
        {
            for (var p = 0; p < known.Probes.Count; p++)
            {
                if (IsSame(known.Probes[p], probe))
                {
                    return new(known, p);
                }
            }
        }
        var key = (SetupKey.Of(setup), meter, probe.Red, probe.Black, probe.Kind, probe.Frequency);
        if (!single.TryGetValue(key, out var block))
        {
            block = new(source, hypotheses, setup, [probe], meter, WidestDcShare * reach);
            single.Add(key, block);
        }
        return new(block, 0);
    }

    public static bool IsSame(Probe a, Probe b) =>
        a.Kind == b.Kind && a.Red == b.Red && a.Black == b.Black && Math.Abs(a.Frequency - b.Frequency) < 1e-6;
}
