using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Sums;

/// <summary>A stage written as a sheet and solved by the same engine as any unit.</summary>
internal sealed class SolvedStage
{
    private const double Hertz = 1000;
    private readonly BenchUnit unit;
    private readonly World world;

    private SolvedStage(BenchUnit unit, World world)
    {
        this.unit = unit;
        this.world = world;
    }

    public bool Settled => world.Settled;

    /// <summary>Times from the generator to the output at 1 kHz; NaN when nothing passes.</summary>
    public double Gain => world.Response([Hertz])?.Points[0].Volts / unit.Sheet.Signals[0].LevelVolts ?? double.NaN;

    public double OutputOhms => world.OutputImpedance([Hertz]) is [var at, ..] ? at.Ohms : double.NaN;

    public double InputOhms => world.InputImpedance([Hertz]) is [var at, ..] ? at.Ohms : double.NaN;

    /// <summary>Largest output below 5 % distortion, volts rms.</summary>
    public double CleanVolts => unit.Worlds.CleanLimit(Setup.Default, []).OutputVolts;

    /// <summary>Where the response has fallen by 3 dB at the top, hertz; NaN above 10 MHz.</summary>
    public double TopHertz => world.Response(10, 10e6, 8)?.High is { } corner ? corner.Hertz : double.NaN;

    /// <summary>Largest rms current in a section of the last winding, amperes.</summary>
    public double WindingAmps => world.WindingCurrents() is { Count: > 0 } all ? all[^1].AmpsRms : double.NaN;

    /// <summary>Null, with findings, when the sheet cannot be read.</summary>
    public static Parsed<SolvedStage> Solve(string sheetText, CancellationToken cancel)
    {
        var read = BenchUnit.From(sheetText);
        return read.Value is { } unit
            ? new(new SolvedStage(unit, unit.Worlds.World(Setup.Default, [], cancel)), [])
            : new(null, read.Findings);
    }

    public double Volts(string net, ProbeKind kind = ProbeKind.Dc)
    {
        var red = unit.Sheet.Nets.Find(net) ?? net;
        var answer = unit.Worlds.Ask(
            Setup.Default,
            [
                [],
            ],
            [new Probe(net, red, NetTable.Ground, kind)],
            MeterClass.Handheld with
            {
                InputOhms = 1e12,
            }
        )[0][0];
        return answer.HasValue ? answer.Value : double.NaN;
    }
}
