using System.Numerics;
using Slowglow.Circuits.Building;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>Follows a signal through solved worlds: small at any frequency, large at 1 kHz with the rectified rails held where they stand.</summary>
internal sealed class SignalFollower(Circuit circuit, WorldSolver solver)
{
    /// <summary>Frequency of levels and headroom, hertz.</summary>
    public const double Hertz = 1000;

    /// <summary>Of a cycle of the signal.</summary>
    public const int Steps = 64;
    private const int Harmonics = 10;

    /// <summary>Response of every unknown to the generator at one volt, for the path in its usual connections; null without mains or path.</summary>
    public Complex[]? Small(WorldState world, Fixtures.PathFixture path, double frequency, out SmallSignalSolver signal)
    {
        signal = new SmallSignalSolver(circuit.Equations);
        if (!world.Settled)
        {
            return null;
        }

        var slots = (double[])world.Slots.Clone();
        Fixtures.Connect(path, 0, slots);
        signal.Prepare(slots, world.Mean, frequency);
        return signal.Respond(path.SourceBranch);
    }

    /// <summary>Fundamental (volts rms) and distortion at the output for generator levels (volts rms), world by world.</summary>
    public (double Volts, double Distortion)[] Large(
        IReadOnlyList<(WorldState World, double Volts)> drives,
        Fixtures.PathFixture path,
        CancellationToken cancel,
        DrivenReference? relative = null
    )
    {
        var problems = drives.Select(d => Problem(d.World, d.Volts, path, relative)).ToList();
        new CycleSolver(circuit.Equations, Steps, []).Solve(problems, Hertz, cancel);
        return [.. problems.Select(p => p.Settled ? Judge(p, path.Out) : (double.NaN, double.NaN))];
    }

    /// <summary>The healthy world at a drive, for others at the same drive to start from; null when it does not settle.</summary>
    public DrivenReference? Reference(WorldState healthy, double volts, Fixtures.PathFixture path, CancellationToken cancel)
    {
        var problem = Problem(healthy, volts, path, asReference: true);
        new CycleSolver(circuit.Equations, Steps, []).Solve([problem], Hertz, cancel);
        return problem.Reference is { } reference
            ? new(reference, healthy.Mean, solver.StatesOf(healthy.Mean, problem.Slots))
            : null;
    }

    /// <summary>A world with its generator at <paramref name="volts"/> rms, to be solved over a cycle of the signal.</summary>
    public CycleProblem Problem(
        WorldState world,
        double volts,
        Fixtures.PathFixture path,
        DrivenReference? relative = null,
        bool asReference = false
    )
    {
        var slots = (double[])world.Slots.Clone();
        circuit.Fixtures.HoldRails(world.Mean, slots);
        Fixtures.Connect(path, Math.Sqrt(2) * volts, slots);
        var states = solver.StatesOf(world.Mean, slots);
        return new CycleProblem
        {
            Slots = slots,
            Start = relative is null
                ? world.Mean
                : [.. world.Mean.Select((x, r) => x + relative.Cycle.End[r] - relative.Mean[r])],
            States = relative is null ? states : [.. states.Select((s, m) => s + relative.Cycle.States[m] - relative.States[m])],
            Relative = relative?.Cycle,
            AsReference = asReference,
        };
    }

    private (double Volts, double Distortion) Judge(CycleProblem problem, int output)
    {
        if (output < 0)
        {
            return (0, double.NaN);
        }

        var n = circuit.Equations.Unknowns;
        double fundamental = 0,
            harmonics = 0;
        for (var h = 1; h <= Harmonics; h++)
        {
            Complex sum = 0;
            for (var k = 0; k < Steps; k++)
            {
                sum += problem.Wave[(k * n) + output] * Complex.FromPolarCoordinates(1, -2 * Math.PI * h * (k + 1) / Steps);
            }

            var rms = sum.Magnitude * Math.Sqrt(2) / Steps;
            if (h == 1)
            {
                fundamental = rms;
            }
            else
            {
                harmonics += rms * rms;
            }
        }

        return (fundamental, fundamental > 0 ? Math.Sqrt(harmonics) / fundamental : double.NaN);
    }
}
