using Slowglow.Solving;

namespace Slowglow.Tests.Devices.Stages;

/// <summary>What an output stage draws and gives, per valve, solved over a cycle of 1 kHz.</summary>
internal sealed record OutputStage(double AnodeMilliamps, double ScreenMilliamps, double Watts, double CathodeVolts)
{
    public const double Hertz = 1000;
    private const int Steps = 128;

    /// <summary>Whether the source gives enough to compute the row: how the grid stands, and the drive.</summary>
    public static bool IsComplete(ValveRow row) =>
        (row.Has("grid_volts") || row.Has("cathode_resistor_ohms"))
        && (row.Has("drive_volts_rms_per_grid") || row.Has("drive_volts_peak_total") || StageConditions.IsFullyDriven(row));

    public static OutputStage Of(StageConditions conditions)
    {
        var still = conditions with { CrestPerGrid = 0 };
        double cathode = 0;
        for (var round = 0; round < 12 && conditions.CathodeOhms > 0; round++)
        {
            // Anode and screen volts are printed over the cathode, which finds its own height.
            cathode = Solve(still, cathode).CathodeVolts;
        }

        var driven = Solve(conditions, cathode);
        if (!conditions.CurrentsAtRest)
        {
            return driven;
        }

        var rest = Solve(still, cathode);
        return driven with { AnodeMilliamps = rest.AnodeMilliamps, ScreenMilliamps = rest.ScreenMilliamps };
    }

    private static OutputStage Solve(StageConditions conditions, double cathode)
    {
        var builder = new StageBuilder(conditions);
        var self = conditions.CathodeOhms > 0;
        var (equations, slots) = builder.Build(
            self ? 0 : conditions.GridVolts,
            conditions.AnodeVolts + cathode,
            conditions.ScreenVolts + cathode,
            double.IsNaN(conditions.CrestPerGrid) ? 0 : conditions.CrestPerGrid
        );
        var rest = new StaticProblem { Slots = slots, Start = new double[equations.Unknowns] };
        new StaticSolver(equations).Solve([rest]);
        Assert.True(rest.Settled);
        var problem = new CycleProblem
        {
            Slots = slots,
            Start = rest.Solution,
            States = [.. equations.StorageBranches.Select(b => State(equations.Branches[b], rest.Solution, slots))],
        };
        new CycleSolver(equations, Steps, []).Solve([problem], Hertz);
        Assert.True(problem.Settled);
        return Read(builder, equations, slots, problem, conditions);
    }

    private static double State(Branch branch, double[] x, double[] slots)
    {
        var u = branch.Rows.Select((r, k) => branch.Weights[k] * x[r]).Sum();
        return branch.Kind == BranchKind.Storage ? u : u / slots[branch.Slot];
    }

    private static OutputStage Read(
        StageBuilder builder,
        Equations equations,
        double[] slots,
        CycleProblem problem,
        StageConditions conditions
    )
    {
        double At(int step, int row) => row < 0 ? 0 : problem.Wave[(step * equations.Unknowns) + row];
        double anode = 0,
            screen = 0;
        foreach (var index in builder.Valves)
        {
            var element = equations.Elements[index];
            var ports = element.Law.Ports;
            var volts = new double[Steps * ports];
            for (var k = 0; k < Steps; k++)
            {
                for (var p = 0; p < ports; p++)
                {
                    volts[(k * ports) + p] = At(k, element.Rows[p]) - At(k, element.Rows[^1]);
                }
            }

            var amps = ElementEvaluation.Currents(element.Law, slots.AsSpan(element.Slot, element.Law.Constants), volts, Steps);
            anode += Enumerable.Range(0, Steps).Average(k => amps[k * ports]);
            screen += ports > 2 ? Enumerable.Range(0, Steps).Average(k => amps[(k * ports) + 2]) : 0;
        }

        var square = Enumerable.Range(0, Steps).Average(k => At(k, builder.Flux) * At(k, builder.Flux));
        return new OutputStage(
            anode * 1e3 / conditions.Valves,
            screen * 1e3 / conditions.Valves,
            square / conditions.LoadOhms,
            builder.Cathode < 0 ? 0 : problem.Mean[builder.Cathode]
        );
    }
}
