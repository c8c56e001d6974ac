using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Source;

/// <summary>Where diagnosis gets its worlds from: the solver, or a network worked by hand in tests.</summary>
internal interface IWorldSource
{
    Sheet Sheet { get; }
    IReadOnlyList<RandomParameter> Parameters { get; }
    IReadOnlyList<Fault> Faults { get; }

    IReadOnlyList<Answer[]> Ask(
        Setup setup,
        IReadOnlyList<IReadOnlyList<Fault>> faultSets,
        IReadOnlyList<Probe> probes,
        MeterClass meter,
        IProgress<double>? progress,
        CancellationToken cancel
    );

    IReadOnlyList<SignalReport> Signal(
        Setup setup,
        IReadOnlyList<IReadOnlyList<Fault>> faultSets,
        string? channel,
        IProgress<double>? progress,
        CancellationToken cancel
    );

    IReadOnlyList<PartStress> Stress(Setup setup, IReadOnlyList<Fault> faults);

    /// <summary>A trait of the sound of a channel; all NaN where it is not computed.</summary>
    SoundTraits Traits(Setup setup, IReadOnlyList<Fault> faults, string channel, Trait trait, CancellationToken cancel) => new();
}
