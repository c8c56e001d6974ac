using Slowglow.Circuits.Building;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>
/// The supply of a healthy world as its load lines: every rectified net behind a resistance, from its open volts. Worlds whose fault lies
/// beyond the supply are at rest on it, which is where their cycles begin.
/// </summary>
internal sealed class SupplyLine
{
    private readonly Circuit circuit;
    private readonly List<(int Siemens, int Volts, double Line, double Open)> rails = [];
    private readonly SupplyParts supply;

    private SupplyLine(Circuit circuit)
    {
        this.circuit = circuit;
        supply = new SupplyParts(circuit.Sheet);
    }

    /// <summary>The healthy unit at rest on its lines.</summary>
    public double[] Rest { get; private set; } = [];

    /// <summary>The same for others at rest on the lines to start from.</summary>
    public RestReference? Reference { get; private set; }

    /// <summary>The lines of a settled healthy world; null when it stands on none.</summary>
    public static SupplyLine? Of(Circuit circuit, WorldState healthy)
    {
        if (healthy.Reference is not { Transfer.Length: > 0 } reference || circuit.Fixtures.Holds.Count == 0)
        {
            return null;
        }

        // Held where it stands, a rail shows what it delivers.
        var line = new SupplyLine(circuit);
        var held = (double[])healthy.Slots.Clone();
        circuit.Fixtures.HoldRails(healthy.Mean, held);
        if (line.Settle(held, healthy.Mean) is not { } rest)
        {
            return null;
        }

        foreach (var ((row, siemens, volts), amps) in circuit.Fixtures.Holds.Zip(circuit.Fixtures.Delivered(rest, held)))
        {
            var ohms = reference.Transfer[(row * circuit.Equations.Unknowns) + row];
            line.rails.Add((siemens, volts, 1 / ohms, healthy.Mean[row] + (amps * ohms)));
        }

        var slots = line.On(healthy.Slots);
        line.Rest = line.Settle(slots, healthy.Mean) ?? [];
        line.Reference = RestReference.Of(
            circuit.Equations,
            new StaticProblem
            {
                Slots = slots,
                Start = line.Rest,
                Solution = line.Rest,
                Settled = line.Rest.Length > 0,
            }
        );
        return line.Rest.Length > 0 ? line : null;
    }

    /// <summary>True when a fault lies within the supply, which the lines then no longer stand for.</summary>
    public bool IsWithin(IReadOnlyList<Fault> faults) => faults.Any(f => supply.Holds(f.Part));

    /// <summary>A world's slots with the supply replaced by its lines.</summary>
    public double[] On(double[] slots)
    {
        var on = (double[])slots.Clone();
        circuit.Fixtures.StopMains(on);
        foreach (var (siemens, volts, line, open) in rails)
        {
            (on[siemens], on[volts]) = (line, open);
        }

        return on;
    }

    private double[]? Settle(double[] slots, double[] start)
    {
        var problem = new StaticProblem { Slots = slots, Start = start };
        new StaticSolver(circuit.Equations).Solve([problem]);
        return problem.Settled ? problem.Solution : null;
    }
}
