namespace Slowglow.Tests.ReferenceSolver;

/// <summary>
/// The reference's own steady state: it runs mains cycles until no net's mean moves from cycle to cycle by more than a bound. A state to
/// start from only saves cycles: wherever it starts, the cycles go on until the bound holds.
/// </summary>
internal sealed class SteadyState
{
    /// <summary>A mean may move by this fraction of itself in a cycle: with time constants up to 25 cycles the rest is within 0.1 %.</summary>
    private const double DriftFraction = 4e-5;

    /// <summary>Or by this much: with the same time constants the rest is within a millivolt.</summary>
    private const double DriftVolts = 4e-5;
    private const int StepsPerCycle = 100;
    private readonly ReferenceCircuit circuit;
    private readonly int cyclesPerRun;
    private readonly double period;

    public SteadyState(ReferenceCircuit circuit, int cyclesPerRun = 5)
    {
        this.circuit = circuit;
        this.cyclesPerRun = cyclesPerRun;
        period = 1 / circuit.Bench.Frequency;
    }

    /// <summary>Mean and ripple of every net over the last cycle.</summary>
    public Dictionary<string, CycleFigures> Figures { get; } = [];

    public CircuitState State { get; private set; } = CircuitState.Rest;

    public int Cycles { get; private set; }

    /// <summary>The net that still moved most when the cycles ran out; empty when settled.</summary>
    public string Restless { get; private set; } = "";

    /// <summary>Settles from everything discharged but the core, as it stands at the zero crossing.</summary>
    public bool SettleFromRest(int mostCycles = 1000) =>
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
    public bool SettleFrom(IReadOnlyDictionary<string, double> means, Func<string, double> rms, int mostCycles = 400)
    {
        var start = circuit.Deck.Nodes.Where(n => means.ContainsKey(n.Key)).ToDictionary(n => n.Value, n => means[n.Key]);
        State = new CircuitState(start, circuit.Magnetised(rms));
        for (var pass = 0; pass < 2; pass++)
        {
            Run(2);
            State = State with
            {
                NodeVolts = circuit.Deck.Nodes.ToDictionary(n => n.Value, n => Corrected(n.Key, n.Value, means)),
            };
        }

        return Settle(State, mostCycles);
    }

    private double Corrected(string net, string node, IReadOnlyDictionary<string, double> means) =>
        State.NodeVolts[node] + (means.TryGetValue(net, out var mean) ? mean - Figures[net].Mean : 0);

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
        string[] wanted = ["time", .. deck.Nodes.Values, .. deck.Coils.Select(c => c + "#branch")];
        var step = period / StepsPerCycle;
        var analysis = FormattableString.Invariant($"tran {step:R} {end:R} 0 {step:R}");
        var vectors = NgSpice.Run(circuit.Text(State), analysis, wanted);
        var time = vectors["time"];
        if (time[^1] < end * (1 - 1e-6))
        {
            throw new InvalidOperationException($"The reference solver stopped at {time[^1]} s:\n{NgSpice.Tail()}");
        }

        Cycles += cycles;
        Note(vectors, time, end);
        State = new CircuitState(
            deck.Nodes.Values.ToDictionary(n => n, n => vectors[n][^1]),
            deck.Coils.ToDictionary(c => c, c => vectors[c + "#branch"][^1])
        );
    }

    private void Note(Dictionary<string, double[]> vectors, double[] time, double end)
    {
        var worst = 1.0;
        Restless = "";
        foreach (var (net, node) in circuit.Deck.Nodes)
        {
            var last = CycleFigures.Of(time, vectors[node], end - period, end);
            var before = CycleFigures.Of(time, vectors[node], end - (2 * period), end - period);
            Figures[net] = last;
            var moved = Math.Abs(last.Mean - before.Mean) / (DriftVolts + (DriftFraction * (Math.Abs(last.Mean) + last.Ripple)));
            if (moved > worst && !net.Contains('#', StringComparison.Ordinal))
            {
                (worst, Restless) = (moved, net);
            }
        }
    }
}
