using System.Globalization;
using Slowglow.Solving;

namespace Slowglow.Benchmarks;

/// <summary>
/// (d): how every net of the stage chain answers every resistor at rest, and the variance of every net. The reference has a sensitivity
/// analysis of its own, for one net a run; beside it the same by differences, altering one resistor after the other.
/// </summary>
internal sealed class SensitivityBenchmark
{
    public const string Argument = "sensitivities";

    /// <summary>One standard deviation of a resistor of 5 %.</summary>
    private const double Sigma = 0.025;

    /// <summary>Of a resistor, for differences.</summary>
    private const double Step = 1e-3;
    private const int Repeats = 60_000;
    private const double Open = 1e12;
    private readonly StageChain chain;
    private readonly StaticProblem healthy;
    private readonly (string Name, int Slot, double Ohms)[] resistors;
    private readonly RestSensitivity sensitivity;

    public SensitivityBenchmark(int stages)
    {
        chain = new StageChain(stages);
        healthy = new StaticProblem { Slots = chain.Slots, Start = new double[chain.Equations.Unknowns] };
        new StaticSolver(chain.Equations).Solve([healthy]);
        resistors = [.. chain.Faults.Where(f => f.Made < Open).Select(f => (f.Name, f.Slot, f.Made)).Distinct()];
        sensitivity = new RestSensitivity(chain.Equations, [.. resistors.Select(r => new SlotChange(r.Slot, -Sigma))]);
    }

    public string Run()
    {
        var ours = Watch.Best(Repeats, () => sensitivity.Solve(chain.Slots, healthy.Solution));
        using var session = new ReferenceSession([.. chain.Cards, .. Nodeset()]);
        var (reference, worst) = Differences(session);
        var figures = resistors.Length * chain.Nets.Count;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"(d) {figures} sensitivities of {chain.Nets.Count} nets to {resistors.Length} resistors, and the variance of every net\n    ours {ours * 1e6:0.0} us, reference by altering {reference * 1e3:0} ms, ratio {reference / ours:0}; worst difference {worst:P2} of a net's largest"
        );
    }

    /// <summary>Seconds, and the worst difference as a share of the net's largest sensitivity.</summary>
    private (double Seconds, double Worst) Differences(ReferenceSession session)
    {
        Dictionary<string, double[]> found = [];
        Dictionary<string, double> made = [];
        var seconds = Watch.Once(() =>
        {
            session.Solve(resistors[0].Name, resistors[0].Ohms);
            made = Volts();
            foreach (var (name, _, ohms) in resistors)
            {
                session.Solve(name, ohms * (1 + Step));
                var moved = Volts();
                found[name] = [.. chain.Nets.Keys.Select(n => (moved[n] - made[n]) / Step * Sigma)];
                ReferenceSession.Say(FormattableString.Invariant($"alter {name} = {ohms:R}"));
                ReferenceSession.Forget();
            }
        });
        double worst = 0;
        foreach (var ((_, row), n) in chain.Nets.Select((net, n) => (net, n)))
        {
            var largest = Enumerable.Range(0, resistors.Length).Max(r => Math.Abs(sensitivity.Of(r, row)));
            worst = Math.Max(
                worst,
                Enumerable
                    .Range(0, resistors.Length)
                    .Max(r => Math.Abs(sensitivity.Of(r, row) - found[resistors[r].Name][n]) / largest)
            );
        }

        return (seconds, worst);
    }

    private Dictionary<string, double> Volts() => chain.Nets.Keys.ToDictionary(n => n, ReferenceSession.Volts);

    private IEnumerable<string> Nodeset() =>
        chain.Nets.Select(n => FormattableString.Invariant($".nodeset v({n.Key})={healthy.Solution[n.Value]:R}"));
}
