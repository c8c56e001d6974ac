using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>Response, impedances, harmonics, what clips first, hum by cause, noise and loops of each channel; concerns of the unit.</summary>
public sealed class ComputeCharacter(BenchUnit unit)
{
    private const double LeastRipple = 1e-3;
    private static readonly double[] ResponseHertz = [5, 10, 20, 50, 100, 200, 500, 1e3, 2e3, 5e3, 10e3, 20e3, 50e3, 100e3];

    /// <summary>
    /// Capacitances of wiring are not in the models, nor those of every valve; above this they rule.
    /// </summary>
    private const double HighestWithValves = 20e3;
    private static readonly double[] ImpedanceHertz = [100, 1e3, 10e3];

    /// <summary>One entry for each signal path, in the sheet's order; none with the power off.</summary>
    public IReadOnlyList<ChannelCharacter> Run(Setup setup, IReadOnlyList<Fault> faults, CancellationToken cancel = default) =>
        setup.PowerOff
            ? []
            : [.. unit.Sheet.Signals.Select(path => Channel(setup with { Channel = path.Name }, path, faults, cancel))];

    private ChannelCharacter Channel(Setup setup, SignalPath path, IReadOnlyList<Fault> faults, CancellationToken cancel)
    {
        var world = unit.Worlds.World(setup, faults, cancel);
        var clean = unit.Worlds.CleanLimit(setup, faults, path.Name).GeneratorVolts;
        double[] drives = double.IsFinite(clean) ? [path.LevelVolts, clean / 2, clean] : [path.LevelVolts];
        return new(
            path.Name,
            world.Response([.. ResponseHertz.Where(f => f <= Highest)], path.Name),
            world.InputImpedance(ImpedanceHertz, path.Name),
            world.OutputImpedance(ImpedanceHertz, path.Name),
            [.. world.Harmonics([.. drives.Order()], path.Name, cancel).OfType<HarmonicContent>()],
            world.ClipsFirst(path.Name, cancel),
            world.FullOutput(path.Name, cancel),
            world.Hum(path.Name),
            world.Noise(channel: path.Name),
            world.Stability(path.Name).FirstOrDefault()
        );
    }

    private double Highest =>
        unit.Sheet.Parts.Any(p => p is ValvePart or TransformerPart { IsOutput: true })
            ? HighestWithValves
            : double.PositiveInfinity;

    /// <summary>Concerns of the unit in a setup with faults.</summary>
    public UnitConcerns Concerns(Setup setup, IReadOnlyList<Fault> faults, CancellationToken cancel = default)
    {
        var world = unit.Worlds.World(setup, faults, cancel);
        return new(
            world.WindingCurrents(),
            [.. world.CapacitorCurrents().Where(c => c.AmpsRms >= LeastRipple).OrderByDescending(c => c.AmpsRms)],
            world.OverRatings(),
            world.OtherStates(cancel),
            world.Stands(cancel),
            world.ThermalLoops()
        );
    }
}
