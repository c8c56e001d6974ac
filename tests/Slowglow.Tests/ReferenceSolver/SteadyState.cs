namespace Slowglow.Tests.ReferenceSolver;

/// <summary>
/// The reference's own steady state: it runs mains cycles until no net's mean moves from cycle to cycle by more than a bound. A state to
/// start from only saves cycles: wherever it starts, the cycles go on until the bound holds.
/// </summary>
internal sealed class SteadyState
{
    /// <summary>A mean may move by this fraction of itself in a cycle: with time constants up to 25 cycles the rest is within 0.1 %.</summary>
    private const double DriftFraction = 4e-5;

    /// <summary>Or by this much: with the same time constants the rest is within 2.5 mV.</summary>
    private const double DriftVolts = 1e-4;

    /// <summary>Movement is judged over this many cycles, so that rounding counts for less.</summary>
    private const int Stride = 4;
    private const int UsualSteps = 100;
    private const int MostStepsOver = 15;
    private const double OtherGrid = 1.09;
    private const int CorrectingPasses = 4;
    private readonly ReferenceCircuit circuit;
    private readonly int cyclesPerRun;
    private readonly int steps;
    private readonly IReadOnlyList<string> branches;
    private readonly double period;
    private readonly HashSet<string> loose;

    public SteadyState(
        ReferenceCircuit circuit,
        int cyclesPerRun = Stride + 2,
        int steps = UsualSteps,
        IReadOnlyList<string>? branches = null
    )
    {
        this.circuit = circuit;
        this.cyclesPerRun = cyclesPerRun;
        this.steps = steps;
        this.branches = branches ?? [];
        period = 1 / circuit.Bench.Frequency;
        loose = LooseNets.Of(circuit.Bench.Sheet);
    }

    /// <summary>Mean and ripple of every net over the last cycle.</summary>
    public Dictionary<string, CycleFigures> Figures { get; } = [];

    /// <summary>The same of the currents in the branches asked for.</summary>
    public Dictionary<string, CycleFigures> Currents { get; } = [];

    public CircuitState State { get; private set; } = CircuitState.Rest;

    public int Cycles { get; private set; }

    /// <summary>The net that still moved most when the cycles ran out; empty when settled.</summary>
    public string Restless { get; private set; } = "";

    /// <summary>Settles from everything discharged but the core, as it stands at the zero crossing.</summary>
    public bool SettleFromRest(int mostCycles = 400) =>
        Settle(
            CircuitState.Rest with
            {
                CoilAmps = circuit.Magnetised(net => net is "MAINS.N" or "GND" ? 0 : circuit.Bench.MainsVolts),
            },
            mostCycles
        );

    /// <summary>
    /// Settles from mean volts by net; what is inside parts finds its own start. A few cycles tell how far each net stands from its mean at the
    /// zero crossing, where the runs begin.
    /// </summary>
    public bool SettleFrom(IReadOnlyDictionary<string, double> means, Func<string, double> rms, int mostCycles = 240)
    {
        var start = circuit.Deck.Nodes.Where(n => means.ContainsKey(n.Key)).ToDictionary(n => n.Value, n => means[n.Key]);
        State = new CircuitState(start, circuit.Magnetised(rms));
        for (var pass = 0; pass < CorrectingPasses; pass++)
        {
            Run(2);
            State = State with { NodeVolts = Corrected(means) };
        }

        return Settle(State, mostCycles);
    }

    private Dictionary<string, double> Corrected(IReadOnlyDictionary<string, double> means) =>
        circuit
            .Deck.Nodes.Where(n => Deck.IsNet(n.Key))
            .ToDictionary(
                n => n.Value,
                n => State.NodeVolts[n.Value] + (means.TryGetValue(n.Key, out var mean) ? mean - Figures[n.Key].Mean : 0)
            );

    private bool Settle(CircuitState start, int mostCycles)
    {
        State = start;
        do
        {
            Run(cyclesPerRun);
        } while (Restless.Length > 0 && Cycles < mostCycles);

        return Restless.Length == 0;
    }

    private void Run(int cycles)
    {
        var deck = circuit.Deck;
        var end = cycles * period;
        string[] wanted = ["time", .. deck.Nodes.Values, .. deck.Coils.Concat(branches).Distinct().Select(c => c + "#branch")];
        var vectors = Transient(wanted, end, steps);
        if (!Reaches(end, vectors))
        {
            // At some instants its step shrinks away; with another grid it passes them.
            vectors = Transient(wanted, end, steps * OtherGrid);
        }

        var time = vectors["time"];
        if (!Reaches(end, vectors))
        {
            throw new InvalidOperationException($"The reference solver stopped at {time[^1]} s:\n{NgSpice.Tail()}");
        }

        Cycles += cycles;
        Note(vectors, time, end);
        foreach (var branch in branches)
        {
            Currents[branch] = CycleFigures.Of(time, vectors[branch + "#branch"], end - period, end);
        }

        State = new CircuitState(
            deck.Nodes.Where(n => Deck.IsNet(n.Key)).ToDictionary(n => n.Value, n => vectors[n.Value][^1]),
            deck.Coils.ToDictionary(c => c, c => vectors[c + "#branch"][^1])
        );
    }

    private Dictionary<string, double[]> Transient(string[] wanted, double end, double stepsOfCycle)
    {
        var step = period / stepsOfCycle;
        var analysis = FormattableString.Invariant($"tran {step:R} {end:R} 0 {step:R}");
        return NgSpice.Run(circuit.Text(State), analysis, wanted, (int)(MostStepsOver * end / step));
    }

    private static bool Reaches(double end, Dictionary<string, double[]> vectors) => vectors["time"][^1] >= end * (1 - 1e-6);

    private void Note(Dictionary<string, double[]> vectors, double[] time, double end)
    {
        var worst = 1.0;
        Restless = "";
        foreach (var (net, node) in circuit.Deck.Nodes)
        {
            var last = CycleFigures.Of(time, vectors[node], end - period, end);
            var then = Math.Max(end - (Stride * period), period);
            var before = CycleFigures.Of(time, vectors[node], then - period, then);
            Figures[net] = last;
            var allowed =
                Math.Round((end - then) / period) * (DriftVolts + (DriftFraction * (Math.Abs(last.Mean) + last.Ripple)));
            var moved = Math.Abs(last.Mean - before.Mean) / allowed;
            if (moved > worst && Deck.IsNet(net) && !loose.Contains(net))
            {
                (worst, Restless) = (moved, net);
            }
        }
    }
}
