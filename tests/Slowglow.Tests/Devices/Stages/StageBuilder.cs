using Slowglow.Circuits.Models.Valve;
using Slowglow.Sheets.Devices;
using Slowglow.Solving;

namespace Slowglow.Tests.Devices.Stages;

/// <summary>An output stage in the solver's equations: its valves by the solver's own laws, everything else ideal.</summary>
internal sealed class StageBuilder(StageConditions conditions)
{
    /// <summary>Siemens of a source without resistance.</summary>
    private const double Stiff = 1e3;
    private readonly EquationsBuilder equations = new();
    private readonly List<(int Element, int Law)> valves = [];

    public int Flux { get; private set; }
    public int Cathode { get; private set; } = -1;
    public IReadOnlyList<int> Valves => [.. valves.Select(v => v.Element)];

    /// <param name="bias">Grid volts to chassis.</param>
    /// <param name="supply">Anode supply to chassis.</param>
    /// <param name="screen">Screen supply to chassis.</param>
    /// <param name="crest">Crest of the drive on each grid.</param>
    public (Equations Equations, double[] Slots) Build(double bias, double supply, double screen, double crest)
    {
        Flux = equations.NewUnknown();
        LayCore();
        Cathode = conditions.CathodeOhms > 0 ? equations.NewUnknown() : -1;
        if (Cathode >= 0)
        {
            var ohms = conditions.OneResistorEach ? conditions.CathodeOhms / conditions.Valves : conditions.CathodeOhms;
            equations.AddBranch(BranchKind.Conductance, Cathode, -1, equations.NewSlot(1 / ohms));
            equations.AddBranch(BranchKind.Storage, Cathode, -1, equations.NewSlot(1e-3));
        }

        var fed = conditions.ScreenFeedOhms > 0 ? LayScreenFeed(supply) : -1;
        for (var v = 0; v < conditions.Valves; v++)
        {
            LayValve(v == 0 ? 1 : -1, bias, supply, screen, crest, fed);
        }

        return (equations.Build(), equations.SlotValues());
    }

    /// <summary>The load across the whole primary, and a magnetising inductance far above it.</summary>
    private void LayCore()
    {
        equations.AddBranch(BranchKind.Conductance, Flux, -1, equations.NewSlot(1 / conditions.LoadOhms));
        var henries = conditions.LoadOhms / (2 * Math.PI * OutputStage.Hertz) * 50;
        equations.AddBranch(BranchKind.Flow, Flux, -1, equations.NewSlot(0.01), equations.NewSlot(henries));
    }

    private void LayValve(int sense, double bias, double supply, double screen, double crest, int fed)
    {
        var anode = equations.NewUnknown();
        var grid = equations.NewUnknown();
        var turns = sense * (conditions.Valves == 1 ? 1.0 : 0.5);
        Source(anode, turns, supply, 0);
        Source(grid, 0, bias, sense * crest);
        var law = LawOf(conditions.Device, out var constants);
        var first = constants.Select(equations.NewSlot).ToArray()[0];
        int[] rows =
            conditions.Device.Kind == DeviceKind.Triode
                ? [anode, grid, Cathode]
                : [anode, grid, fed >= 0 ? fed : Screen(turns, supply, screen), Cathode];
        valves.Add((equations.AddElement(law, rows, first), 0));
    }

    /// <summary>One point for all screens, bypassed to the cathodes: that is not said, and any such stage has it.</summary>
    private int LayScreenFeed(double supply)
    {
        var row = equations.NewUnknown();
        var (siemens, steady, swing) = (
            equations.NewSlot(1 / conditions.ScreenFeedOhms),
            equations.NewSlot(supply),
            equations.NewSlot(0)
        );
        equations.AddBranch(BranchKind.Conductance, [row], [1], siemens, steady, swing);
        equations.AddBranch(BranchKind.Conductance, row, Cathode, equations.NewSlot(1 / conditions.ScreenBleedOhms));
        equations.AddBranch(BranchKind.Storage, row, Cathode, equations.NewSlot(1e-4));
        return row;
    }

    private int Screen(double turns, double supply, double screen)
    {
        var row = equations.NewUnknown();
        Source(row, turns * conditions.ScreenTap, conditions.ScreenTap > 0 ? supply : screen, 0);
        return row;
    }

    /// <summary>Volts behind a share of the primary's turns.</summary>
    private void Source(int row, double turns, double steady, double swing)
    {
        var slot = equations.NewSlot(Stiff);
        var steadySlot = equations.NewSlot(steady);
        var swingSlot = equations.NewSlot(swing);
        equations.AddBranch(BranchKind.Conductance, [row, Flux], [1, turns], slot, steadySlot, swingSlot);
    }

    private static Law LawOf(Device valve, out double[] constants)
    {
        string[] names = ["mu", "ex", "kg1", "kp", "kvb", "vct", "gg", "cg", "xi"];
        constants = valve.Kind == DeviceKind.Triode ? [.. names.Select(n => valve[n]), 1] : PentodeConstants.Of(valve);
        return valve.Kind == DeviceKind.Triode ? new TriodeLaw() : new PentodeLaw();
    }
}
