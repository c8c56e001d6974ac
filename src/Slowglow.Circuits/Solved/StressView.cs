using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>What the models ask of a world to work out watts, volts and amperes in their part.</summary>
/// <param name="hertz">Frequency of the cycle that was solved.</param>
internal sealed class StressView(Circuit circuit, WorldState world, double hertz)
{
    /// <summary>No source in a unit gives this: a net that stands so far off is held by nothing, and would leak away.</summary>
    private const double Unheld = 10e3;

    private readonly Dictionary<int, double[]> currents = [];

    /// <summary>A world over its mains cycle.</summary>
    public StressView(Circuit circuit, WorldState world)
        : this(circuit, world, circuit.Sheet.Mains.Frequency) { }

    public double[] Slots => world.Slots;

    /// <summary>Whether a valve is out of its socket, or stands for one that does not draw yet.</summary>
    public bool IsOut(string designator) => world.Setup.ValvesOut || world.Setup.Pulled.Contains(designator);

    public double MeanAcross(int a, int b) => world.MeanAt(a) - world.MeanAt(b);

    public double MeanSquareAcross(int a, int b) => MeanSquare([a, b], [1, -1]);

    public double MeanSquare(int[] rows, double[] weights)
    {
        double sum = 0;
        for (var k = 0; k < world.Steps; k++)
        {
            double u = 0;
            for (var r = 0; r < rows.Length; r++)
            {
                u += weights[r] * world.At(k, rows[r]);
            }

            sum += u * u;
        }

        return world.Steps == 0 ? 0 : sum / world.Steps;
    }

    /// <summary>Rms amperes through a resistance and an inductance in series between two rows.</summary>
    public double FlowRmsAmps(int a, int b, double ohms, double henries)
    {
        double[] volts = [.. Enumerable.Range(0, world.Steps).Select(k => world.At(k, a) - world.At(k, b))];
        return BranchWave.Rms(FlowCurrent.Of(volts, ohms, henries, hertz));
    }

    /// <summary>Most that a stands above b in the cycle; never below zero, and zero where nothing holds one of them.</summary>
    public double LargestAcross(int a, int b)
    {
        double largest = 0;
        for (var k = 0; k < world.Steps; k++)
        {
            largest = Math.Max(largest, world.At(k, a) - world.At(k, b));
        }

        return largest < Unheld ? largest : 0;
    }

    /// <summary>Mean watts turned to heat in an element.</summary>
    public double ElementWatts(int element)
    {
        var (rows, ports, i) = Of(element);
        double sum = 0;
        for (var k = 0; k < world.Steps; k++)
        {
            for (var p = 0; p < ports; p++)
            {
                sum += i[(k * ports) + p] * (world.At(k, rows[p]) - world.At(k, rows[^1]));
            }
        }

        return world.Steps == 0 ? 0 : sum / world.Steps;
    }

    public double ElementMeanAmps(int element, int port) => Sum(element, port, i => i);

    public double ElementRmsAmps(int element, int port) => Math.Sqrt(Sum(element, port, i => i * i));

    private double Sum(int element, int port, Func<double, double> of)
    {
        var (_, ports, i) = Of(element);
        double sum = 0;
        for (var k = 0; k < world.Steps; k++)
        {
            sum += of(i[(k * ports) + port]);
        }

        return world.Steps == 0 ? 0 : sum / world.Steps;
    }

    private (int[] Rows, int Ports, double[] Currents) Of(int element)
    {
        var use = circuit.Equations.Elements[element];
        var ports = use.Law.Ports;
        if (!currents.TryGetValue(element, out var i))
        {
            var volts = new double[world.Steps * ports];
            for (var k = 0; k < world.Steps; k++)
            {
                for (var p = 0; p < ports; p++)
                {
                    volts[(k * ports) + p] = world.At(k, use.Rows[p]) - world.At(k, use.Rows[^1]);
                }
            }

            var constants = world.Slots.AsSpan(use.Slot, use.Law.Constants);
            currents[element] = i = ElementEvaluation.Currents(use.Law, constants, volts, world.Steps);
        }

        return (use.Rows, ports, i);
    }
}
