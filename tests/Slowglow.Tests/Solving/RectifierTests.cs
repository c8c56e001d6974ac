using Slowglow.Circuits.Models.Diode;
using Slowglow.Solving;

namespace Slowglow.Tests.Solving;

/// <summary>Capacitor-input rectifiers against solved points: tests/reference/rectifier_capacitor_input.csv (its source column).</summary>
public sealed class RectifierTests
{
    private const double Peak = 300;
    private const double Load = 3000;
    private const double Hertz = 50;

    public static TheoryData<string, double, double, double, double> Points()
    {
        var data = new TheoryData<string, double, double, double, double>();
        foreach (
            var line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "reference", "rectifier_capacitor_input.csv"))
                .Skip(1)
        )
        {
            var f = line.Split(',');
            double N(int k) => double.Parse(f[k], System.Globalization.CultureInfo.InvariantCulture);
            data.Add(f[0], N(1), N(2), N(3), N(4));
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Points))]
    public void Mean_and_ripple_agree_with_solved_points(
        string wave,
        double omegaCr,
        double sourcePercent,
        double mean,
        double ripple
    )
    {
        var problem = Solve(wave, omegaCr, sourcePercent, out var output);
        Assert.True(problem.Settled, $"restless {problem.Restless} after {problem.Cycles}");

        // The points are for ideal diodes: the drop is made as good as nothing by an ideality of 0.02.
        Assert.Equal(mean, problem.Mean[output] / Peak, 0.01 * mean);
        var n = problem.Mean.Length;
        var square = 0.0;
        for (var k = 0; k < problem.Wave.Length / n; k++)
        {
            var d = problem.Wave[(k * n) + output] - problem.Mean[output];
            square += d * d * n / problem.Wave.Length;
        }

        Assert.Equal(ripple, 100 * Math.Sqrt(square) / problem.Mean[output], 0.03 * ripple);
    }

    private static CycleProblem Solve(string wave, double omegaCr, double sourcePercent, out int output)
    {
        var b = new EquationsBuilder();
        int plus = b.NewUnknown(),
            minus = b.NewUnknown(),
            hot = b.NewUnknown();
        output = hot;
        var source = b.NewSlot(100 / sourcePercent / Load);
        var swing = b.NewSlot(Peak);
        b.AddBranch(BranchKind.Conductance, plus, minus, source, -1, swing);
        (int, int)[] diodes = wave == "full" ? [(plus, hot), (minus, hot), (-1, plus), (-1, minus)] : [(plus, hot), (-1, minus)];
        foreach (var (anode, cathode) in diodes)
        {
            var first = b.NewSlot(1e-9);
            foreach (var constant in new[] { 0.02, 1e-3, 1e5, 1, 1e-6, 1 })
            {
                b.NewSlot(constant);
            }

            b.AddElement(new DiodeLaw(), [anode, cathode], first);
        }

        b.AddBranch(BranchKind.Conductance, hot, -1, b.NewSlot(1 / Load));
        b.AddBranch(BranchKind.Storage, hot, -1, b.NewSlot(omegaCr / (2 * Math.PI * Hertz * Load)));
        var equations = b.Build();
        var problem = new CycleProblem
        {
            Slots = b.SlotValues(),
            Start = [0, 0, 0.8 * Peak],
            States = [0.8 * Peak],
        };
        new CycleSolver(equations, 120, []).Solve([problem], Hertz);
        return problem;
    }
}
