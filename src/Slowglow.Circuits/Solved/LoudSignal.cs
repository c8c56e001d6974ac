using System.Numerics;
using Slowglow.Circuits.Building;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>One world driven hard at 1 kHz, with every unknown followed through the cycle.</summary>
internal sealed class LoudSignal
{
    /// <summary>Enough for the tenth harmonic to come out right.</summary>
    public const int Steps = 256;
    private readonly CycleProblem problem;

    private LoudSignal(CycleProblem problem, double volts) => (this.problem, GeneratorVolts) = (problem, volts);

    /// <summary>Volts rms of the generator, open circuit.</summary>
    public double GeneratorVolts { get; }
    public ReadOnlySpan<double> Slots => problem.Slots;
    public double[] Mean => problem.Mean;

    /// <summary>One for each level; null for one that does not settle.</summary>
    public static IReadOnlyList<LoudSignal?> At(
        AskedWorld asked,
        Fixtures.PathFixture path,
        IReadOnlyList<double> volts,
        CancellationToken cancel,
        int steps = Steps
    )
    {
        var problems = volts.Select(v => asked.Follower.Problem(asked.State, v, path)).ToList();
        new CycleSolver(asked.Circuit.Equations, steps, []).Solve(problems, SignalFollower.Hertz, cancel);
        return [.. problems.Zip(volts, (p, v) => p.Settled ? new LoudSignal(p, v) : null)];
    }

    /// <summary>Volts of an unknown (0 for ground) at a step.</summary>
    public double At(int step, int row) => row < 0 ? 0 : problem.Wave[(step * problem.Mean.Length) + row];

    public int Count => problem.Wave.Length / problem.Mean.Length;

    /// <summary>Every unknown at a step.</summary>
    public double[] Unknowns(int step)
    {
        var n = problem.Mean.Length;
        return [.. problem.Wave.AsSpan(step * n, n).ToArray().Select(v => (double)v)];
    }

    /// <summary>Phasor of a harmonic, volts rms; the generator's sine is real and negative imaginary.</summary>
    public Complex Harmonic(int row, int order)
    {
        Complex sum = 0;
        for (var k = 0; k < Count; k++)
        {
            sum += At(k, row) * Complex.FromPolarCoordinates(Math.Sqrt(2) / Count, -2 * Math.PI * order * (k + 1) / Count);
        }

        return sum;
    }
}
