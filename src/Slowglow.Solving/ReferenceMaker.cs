using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>Makes references of settled worlds.</summary>
internal sealed class ReferenceMaker(Equations equations, int steps, IReadOnlyList<SlotChange[]> parameters)
{
    /// <summary>An element whose conductance swings by more than this part of what its nets conduct is a switch.</summary>
    private const double Swings = 0.1;

    /// <summary>Instants of the cycle that are looked at.</summary>
    private const int Instants = 60;

    /// <summary>Runs the settled problem once more, following its states, its parameters and steady currents into every unknown.</summary>
    public CycleReference? Make(CycleProblem problem, double step)
    {
        var driven = problem.WithSpread ? equations.Unknowns : 0;
        var run = new CycleRun(equations, steps, parameters, driven, problem.Watched) { Alone = true };
        for (var lane = 0; lane < Lanes.Width; lane++)
        {
            run.Load(lane, problem);
            run.Begin(lane, problem.States, problem.End);
        }

        run.Prepare(step);
        run.Go(withStates: true, problem.WithSpread);
        var n = run.Columns.States;
        var approach = new double[n * n];
        for (var m = 0; m < n; m++)
        {
            approach[(m * n) + m] = 1;
        }

        if ((run.Working & 1) == 0 || !DenseSolve.InPlace(PeriodSearch.PeriodMatrix(run.Columns, 0), approach, n, n))
        {
            return null;
        }

        var reference = new CycleReference(problem, Lanes.Column(run.Wave, 0), approach);
        if (problem.WithSpread)
        {
            var spread = new CycleSpread(run.Columns, equations);
            var (mean, rms) = spread.Of(problem, 0, 0, parameters.Count);
            reference.MeanSpread = mean;
            reference.RmsSpread = Array.ConvertAll(rms, v => (float)v);
            reference.Transfer = spread.Of(problem, 0, parameters.Count, equations.Unknowns).Mean;
            reference.WatchedShare = problem.Watched < 0 ? [] : spread.WatchedShare(0, parameters.Count);
            reference.Switching = Switching(reference);
            new NearbySpread(equations, parameters).Note(reference);
            problem.MeanSpread = Array.ConvertAll(mean, v => (float)v);
            problem.RmsSpread = reference.RmsSpread;
        }

        return reference;
    }

    private bool[] Switching(CycleReference reference)
    {
        var system = new LaneSystem(equations);
        for (var s = 0; s < equations.Slots; s++)
        {
            system.Slots[s] = Lanes.All(reference.Slots[s]);
        }

        var (least, most) = (new double[equations.Elements.Count], new double[equations.Elements.Count]);
        Array.Fill(least, double.PositiveInfinity);
        var unknowns = equations.Unknowns;
        for (var k = 0; k < steps; k += Math.Max(1, steps / Instants))
        {
            for (var r = 0; r < unknowns; r++)
            {
                system.X[r] = Lanes.All(reference.Wave[(k * unknowns) + r]);
            }

            system.Elements.Linearise(system.X);
            system.Elements.Evaluate(system.Slots);
            for (var e = 0; e < least.Length; e++)
            {
                var swing = Conducts(system, e, reference);
                (least[e], most[e]) = (Math.Min(least[e], swing), Math.Max(most[e], swing));
            }
        }

        return [.. least.Zip(most, (low, high) => high - low > Swings)];
    }

    /// <summary>Largest of an element's own conductances, times the resistance between its nets.</summary>
    private double Conducts(LaneSystem system, int e, CycleReference reference)
    {
        var rows = equations.Elements[e].Rows;
        var slopes = system.Elements.SlopesOf(e);
        var ports = rows.Length - 1;
        double R(int a, int b) => a < 0 || b < 0 ? 0 : reference.Transfer[(a * equations.Unknowns) + b];
        double largest = 0;
        for (var p = 0; p < ports; p++)
        {
            var (a, b) = (rows[p], rows[ports]);
            var ohms = Math.Abs(R(a, a) + R(b, b) - R(a, b) - R(b, a));
            largest = Math.Max(largest, slopes[(p * ports) + p].GetElement(0) * ohms);
        }

        return largest;
    }
}
