using Slowglow.Circuits.Building;

namespace Slowglow.Circuits.Solved;

/// <summary>What a source sees at the input of a path, and what a load sees at its output.</summary>
internal sealed class ImpedanceQuestion(AskedWorld asked, Fixtures.PathFixture path)
{
    private readonly SmallSpread spread = new(asked);

    /// <summary>Between input and ground with the generator taken off.</summary>
    public IReadOnlyList<ImpedancePoint> Input(IReadOnlyList<double> hertz) =>
        Ask(new SignalSweep(asked, path).WithoutGenerator(), path.In, path.SourceBranch, hertz);

    /// <summary>Between output and ground with load and loudspeaker taken off and the generator connected, turned down.</summary>
    public IReadOnlyList<ImpedancePoint> Output(IReadOnlyList<double> hertz) =>
        Ask(new SignalSweep(asked, path).WithoutLoad(), path.Out, asked.Parts.BranchAt(path.LoadSlot), hertz);

    private List<ImpedancePoint> Ask(SignalSweep sweep, int row, int branch, IReadOnlyList<double> hertz) =>
        row < 0 ? [] : [.. hertz.Select(f => Point(sweep.At(f), row, branch))];

    private ImpedancePoint Point(SignalSweep sweep, int row, int branch)
    {
        var x = sweep.Pushed(branch);
        var moves = spread.OfMagnitude(sweep, x, sweep.Signal.Adjoint(row, -1), x[row]);
        return new(sweep.Hertz, x[row].Magnitude, x[row].Phase * 180 / Math.PI, x[row].Magnitude * SmallSpread.Sigma(moves));
    }
}
