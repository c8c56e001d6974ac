using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Loudspeaker;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>Levels, clean headroom and hum of each channel, healthy or with faults.</summary>
public sealed class ComputeLevels(BenchUnit unit)
{
    private const double TestFrequency = 1000;

    /// <summary>One entry for each signal path of the sheet, in its order; none when the sheet names no path or the power is off.</summary>
    public IReadOnlyList<ChannelLevels> Run(Setup setup, IReadOnlyList<Fault> faults, CancellationToken cancel = default) =>
        setup.PowerOff
            ? []
            : [.. unit.Sheet.Signals.Select(path => Channel(setup with { Channel = path.Name }, path, faults, cancel))];

    private ChannelLevels Channel(Setup setup, SignalPath path, IReadOnlyList<Fault> faults, CancellationToken cancel)
    {
        var report = unit.Worlds.Signal(setup, [faults], path.Name, cancel: cancel)[0];
        var clean = unit.Worlds.CleanLimit(setup, faults, path.Name);
        var drawn = RelayStands.In(setup, unit.Sheet, unit.Worlds.World(setup, faults, cancel));
        var load = LoadOhms(drawn, path);
        var watts = double.IsFinite(load) ? clean.OutputVolts * clean.OutputVolts / load : double.NaN;
        var stages = Stages(setup, drawn, path, faults, cancel);
        return new(
            path.Name,
            path.LevelVolts,
            report.Settled ? report.LevelVolts : double.NaN,
            clean.OutputVolts,
            clean.GeneratorVolts,
            watts,
            report.Settled ? report.HumVolts : double.NaN,
            report.Settled ? report.OffsetVolts : double.NaN,
            stages
        );
    }

    private List<StageLevel> Stages(
        Setup setup,
        Setup drawn,
        SignalPath path,
        IReadOnlyList<Fault> faults,
        CancellationToken cancel
    )
    {
        var nets = SignalChain.Of(unit.Sheet, path, drawn);
        Probe[] probes = [.. nets.Select(n => new Probe(n, n, NetTable.Ground, ProbeKind.Level, TestFrequency))];
        var answers = unit.Worlds.Ask(setup, [faults], probes, MeterClass.Handheld, cancel: cancel)[0];
        List<StageLevel> stages = [];
        var before = double.NaN;
        foreach (var (net, answer) in nets.Zip(answers))
        {
            var volts = answer.HasValue ? Math.Abs(answer.Value) : double.NaN;
            stages.Add(new(net, volts, before > 0 ? volts / before : double.NaN));
            before = volts;
        }
        return stages;
    }

    /// <summary>What the output works into: the loudspeaker on it, or the load of the setup or of the sheet.</summary>
    private double LoadOhms(Setup setup, SignalPath path)
    {
        var joins = NetJoins.In(setup, unit.Sheet);
        var speaker = unit
            .Sheet.Parts.OfType<LoudspeakerPart>()
            .FirstOrDefault(l => l.Pins.Any(p => joins.Of(p.Net) == joins.Of(path.Out)));
        return setup.LoadOhms ?? (double.IsFinite(path.LoadOhms) ? path.LoadOhms : speaker?.NominalOhms ?? double.NaN);
    }
}
