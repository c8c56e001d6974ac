using Slowglow.Circuits;
using Slowglow.Diagnosis.Source;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Diagnosis;

/// <summary>Counts the worlds with one fault that are asked for in one setup.</summary>
internal sealed class CountedSource(IWorldSource source) : IWorldSource
{
    public Setup? Counted { get; set; }

    public int Singles { get; private set; }

    public Sheet Sheet => source.Sheet;
    public IReadOnlyList<RandomParameter> Parameters => source.Parameters;
    public IReadOnlyList<Fault> Faults => source.Faults;

    public IReadOnlyList<Answer[]> Ask(
        Setup setup,
        IReadOnlyList<IReadOnlyList<Fault>> faultSets,
        IReadOnlyList<Probe> probes,
        MeterClass meter,
        IProgress<double>? progress,
        CancellationToken cancel
    )
    {
        if (Counted is { } counted && SetupKey.Of(counted) == SetupKey.Of(setup))
        {
            Singles += faultSets.Count(f => f.Count == 1);
        }

        return source.Ask(setup, faultSets, probes, meter, progress, cancel);
    }

    public IReadOnlyList<SignalReport> Signal(
        Setup setup,
        IReadOnlyList<IReadOnlyList<Fault>> faultSets,
        string? channel,
        IProgress<double>? progress,
        CancellationToken cancel
    ) => source.Signal(setup, faultSets, channel, progress, cancel);

    public IReadOnlyList<PartStress> Stress(Setup setup, IReadOnlyList<Fault> faults) => source.Stress(setup, faults);

    public SoundTraits Traits(Setup setup, IReadOnlyList<Fault> faults, string channel, Trait trait, CancellationToken cancel) =>
        source.Traits(setup, faults, channel, trait, cancel);
}
