using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Source;

/// <summary>The solver's worlds. With the limiter in, a good fuse is taken as fitted: a blown one is left out of the fault set.</summary>
internal sealed class WorldSource(Worlds worlds) : IWorldSource
{
    private readonly HashSet<string> fuses = [.. worlds.Circuit.Sheet.Parts.OfType<FusePart>().Select(f => f.Designator)];

    public Sheet Sheet => worlds.Circuit.Sheet;
    public IReadOnlyList<RandomParameter> Parameters => worlds.Circuit.Parameters;
    public IReadOnlyList<Fault> Faults => worlds.Circuit.Faults;

    public IReadOnlyList<Answer[]> Ask(
        Setup setup,
        IReadOnlyList<IReadOnlyList<Fault>> faultSets,
        IReadOnlyList<Probe> probes,
        MeterClass meter,
        IProgress<double>? progress,
        CancellationToken cancel
    ) => worlds.Ask(setup, [.. faultSets.Select(f => AsFitted(setup, f))], probes, meter, progress, cancel);

    public IReadOnlyList<SignalReport> Signal(
        Setup setup,
        IReadOnlyList<IReadOnlyList<Fault>> faultSets,
        string? channel,
        IProgress<double>? progress,
        CancellationToken cancel
    ) => worlds.Signal(setup, [.. faultSets.Select(f => AsFitted(setup, f))], channel, progress, cancel);

    public IReadOnlyList<PartStress> Stress(Setup setup, IReadOnlyList<Fault> faults) =>
        worlds.Stress(setup, AsFitted(setup, faults));

    public SoundTraits Traits(Setup setup, IReadOnlyList<Fault> faults, string channel, Trait trait, CancellationToken cancel) =>
        new TraitQuestion(worlds, setup, channel).Ask(AsFitted(setup, faults), trait, cancel);

    private IReadOnlyList<Fault> AsFitted(Setup setup, IReadOnlyList<Fault> faults) =>
        setup.LimiterWatts is null || !faults.Any(IsBlown) ? faults : [.. faults.Where(f => !IsBlown(f))];

    private bool IsBlown(Fault fault) => fault.Mode == FailureMode.Open && fuses.Contains(fault.Part);
}
