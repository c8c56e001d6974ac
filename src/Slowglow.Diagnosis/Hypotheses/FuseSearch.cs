using Slowglow.Circuits;
using Slowglow.Diagnosis.Source;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Hypotheses;

/// <summary>Finds the faults that would blow a fuse: those that raise the inlet current, or whose world does not settle, are looked at closely.</summary>
internal sealed class FuseSearch(IWorldSource source)
{
    /// <summary>Common practice, no source: a fuse carries its rating for ever, twice it for minutes at most; even odds here.</summary>
    private const double EvenOddsRatio = 1.8;

    /// <summary>A fuse less likely to go than this is taken to hold.</summary>
    private const double LeastShare = 0.05;

    /// <summary>Inlet current over the healthy one that makes a fault worth a closer look.</summary>
    private const double Suspicious = 1.2;

    private readonly string[] fuses = [.. source.Sheet.Parts.OfType<FusePart>().Select(f => f.Designator)];

    public IReadOnlyList<BlownFuse> Find(Setup setup, IProgress<double>? progress, CancellationToken cancel)
    {
        if (fuses.Length == 0)
        {
            return [];
        }
        List<IReadOnlyList<Fault>> sets =
        [
            [],
            .. source.Faults.Select(f => new[] { f }),
        ];
        var inlet = new Probe(Probe.Inlet, Probe.Inlet, "", ProbeKind.Ac);
        var answers = source.Ask(setup, sets, [inlet], MeterClass.Handheld, progress, cancel);
        var healthy = answers[0][0];
        var found = new List<BlownFuse>();
        for (var i = 0; i < source.Faults.Count; i++)
        {
            cancel.ThrowIfCancellationRequested();
            if (IsWorthALook(source.Faults[i], answers[i + 1][0], healthy))
            {
                found.AddRange(Blown(setup, i));
            }
        }
        return found;
    }

    private bool IsWorthALook(Fault fault, Answer inlet, Answer healthy)
    {
        if (fuses.Contains(fault.Part))
        {
            return false;
        }
        return !inlet.HasValue || !healthy.HasValue || inlet.Value > Suspicious * healthy.Value;
    }

    /// <summary>The fuse that is worst overrun goes first; another one close behind may go instead.</summary>
    private IEnumerable<BlownFuse> Blown(Setup setup, int fault)
    {
        var overrun = source
            .Stress(setup, [source.Faults[fault]])
            .Where(s => fuses.Contains(s.Part) && s.AmpsRatio > 1)
            .OrderByDescending(s => s.AmpsRatio)
            .Take(2)
            .ToList();
        if (overrun.Count == 0)
        {
            yield break;
        }
        var worst = overrun[0].AmpsRatio;
        var chance = 1 / (1 + Math.Pow(EvenOddsRatio / worst, 6));
        var weights = overrun.Select(s => Math.Pow(s.AmpsRatio / worst, 3)).ToList();
        for (var i = 0; i < overrun.Count; i++)
        {
            var share = chance * weights[i] / weights.Sum();
            if (share > LeastShare)
            {
                yield return new(fault, overrun[i].Part, overrun[i].AmpsRatio, Math.Min(share, 0.98));
            }
        }
    }
}
