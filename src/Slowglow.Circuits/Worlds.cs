using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Circuits;

/// <summary>
/// Solves worlds of one circuit and answers probes. Solved worlds are kept, so that asking again costs nothing. Thread-safe.
/// A fault set is a list of simultaneous faults; the empty list is the healthy world.
/// </summary>
public sealed class Worlds
{
    public Circuit Circuit { get; }

    public Worlds(Circuit circuit) => Circuit = circuit;

    /// <summary>
    /// Answers every probe in every world: result [set][probe]. All probes are taken in the one setup. Spreads included.
    /// </summary>
    public IReadOnlyList<Answer[]> Ask(
        Setup setup,
        IReadOnlyList<IReadOnlyList<Fault>> faultSets,
        IReadOnlyList<Probe> probes,
        MeterClass meter,
        IProgress<double>? progress = null,
        CancellationToken cancel = default
    ) => throw new NotSupportedException();

    /// <summary>
    /// How every world handles a 1 kHz signal on a channel (null = the setup's, else the first): level and how early it clips.
    /// Result [set].
    /// </summary>
    public IReadOnlyList<SignalReport> Signal(
        Setup setup,
        IReadOnlyList<IReadOnlyList<Fault>> faultSets,
        string? channel = null,
        IProgress<double>? progress = null,
        CancellationToken cancel = default
    ) => throw new NotSupportedException();

    /// <summary>Largest output (volts rms at 1 kHz) below 5 % distortion, and the generator level that gives it.</summary>
    public CleanLimit CleanLimit(Setup setup, IReadOnlyList<Fault> faults, string? channel = null) => throw new NotSupportedException();

    /// <summary>What every part stands in a world, against its ratings.</summary>
    public IReadOnlyList<PartStress> Stress(Setup setup, IReadOnlyList<Fault> faults) => throw new NotSupportedException();
}
