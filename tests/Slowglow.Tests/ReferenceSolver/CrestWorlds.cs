using Slowglow.Circuits;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Setups;
using Slowglow.Solving;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>
/// Our own resting states with the mains frozen at its crest, as worlds are started from: direct volts throughout, whatever feeds the sheet.
/// Regulator valves are dark, relays released and heaters hot, on both sides.
/// </summary>
internal sealed class CrestWorlds(Circuit circuit)
{
    private const double StillOhms = 1e9;

    /// <summary>The healthy world first, then one for each fault, started from the healthy one.</summary>
    public IReadOnlyList<CrestWorld> Solve(IReadOnlyList<Fault> faults)
    {
        var healthy = Problem([], new double[circuit.Equations.Unknowns]);
        var solver = new StaticSolver(circuit.Equations);
        solver.Solve([healthy], 1);
        List<StaticProblem> all = [healthy, .. faults.Select(f => Problem([f], healthy.Solution))];
        solver.Solve([.. all.Skip(1)], 1);
        var ohms = Resistances(all);
        return [.. all.Select((p, k) => new CrestWorld(circuit, k == 0 ? [] : [faults[k - 1]], p.Settled, p.Solution, ohms[k]))];
    }

    private StaticProblem Problem(IReadOnlyList<Fault> faults, double[] start)
    {
        var slots = circuit.SlotsOf(Setup.Default, faults);
        foreach (var slot in circuit.OpenAtCrest)
        {
            slots[slot] = StillOhms;
        }

        return new StaticProblem { Slots = slots, Start = start };
    }

    private List<float[]> Resistances(List<StaticProblem> problems)
    {
        var resistance = new TransferResistance(circuit.Equations);
        return
        [
            .. problems
                .Chunk(Lanes.Width)
                .SelectMany(four => resistance.Of([.. four.Select(p => (p.Slots, Array.ConvertAll(p.Solution, v => (float)v)))])),
        ];
    }
}
