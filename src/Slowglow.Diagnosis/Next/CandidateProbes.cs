using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Next;

/// <summary>Every reading a technician could sensibly take, by setup.</summary>
internal sealed class CandidateProbes
{
    private readonly LiveProbes live;
    private readonly ColdProbes cold;
    private readonly Sheet sheet;

    public CandidateProbes(Sheet sheet)
    {
        this.sheet = sheet;
        live = new LiveProbes(sheet);
        cold = new ColdProbes(sheet);
    }

    /// <summary>Probes for a setup; each pair of nets once for each kind.</summary>
    public IReadOnlyList<Probe> For(Setup setup)
    {
        IEnumerable<Probe> all =
            setup.PowerOff ? cold.All()
            : IsOtherChannel(setup) ? live.Levels()
            : [.. live.Volts(), .. HasSignal(setup) ? live.Levels() : []];
        return [.. all.Where(p => p.Red != p.Black).DistinctBy(p => (p.Red, p.Black, p.Kind))];
    }

    /// <summary>A signal is put in with the unit as it is used: full mains, valves in, no limiter.</summary>
    private bool HasSignal(Setup setup) =>
        sheet.Signals.Count > 0 && !setup.ValvesOut && setup.Pulled.Count == 0 && setup.LimiterWatts is null;

    private bool IsOtherChannel(Setup setup) =>
        setup.Channel is not null && sheet.Signals.Count > 1 && setup.Channel != sheet.Signals[0].Name;
}
