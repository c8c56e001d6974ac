using Slowglow.Circuits.Models;
using Slowglow.Sheets;
using Slowglow.Solving;

namespace Slowglow.Circuits.Building;

/// <summary>Collects nets, equations, random parameters and findings while the parts of a sheet are made solvable.</summary>
internal sealed class CircuitBuilder(Sheet sheet)
{
    /// <summary>Siemens of something that should not conduct.</summary>
    public const double OpenSiemens = 1e-12;

    /// <summary>Siemens of a short within a part: 0.1 ohm.</summary>
    public const double ShortSiemens = 10;

    /// <summary>Siemens of a wire or closed contact: 10 milliohm.</summary>
    public const double WireSiemens = 100;

    private readonly Dictionary<string, int> rows = new() { [NetTable.Ground] = -1 };
    private readonly List<string> nets = [];
    private readonly Dictionary<string, int> pinsOnNet = sheet
        .Parts.SelectMany(p => p.Pins)
        .GroupBy(p => p.Net)
        .ToDictionary(g => g.Key, g => g.Count());
    private readonly List<RandomParameter> parameters = [];
    private readonly List<SlotChange[]> changes = [];

    public Sheet Sheet { get; } = sheet;
    public EquationsBuilder Equations { get; } = new();
    public List<Finding> Findings { get; } = [];

    /// <summary>Coils of relays by designator, for their contacts; complete when all parts are laid.</summary>
    public Dictionary<string, RelayCoil> Coils { get; } = [];

    /// <summary>Slots opened for the first guess at the crest of the mains (magnetising paths of mains transformers).</summary>
    public List<int> OpenAtCrest { get; } = [];

    /// <summary>By parameter: windings whose turns it moves.</summary>
    public Dictionary<int, TurnsSpread> Turns { get; } = [];

    /// <summary>Net to row; ground is -1.</summary>
    public IReadOnlyDictionary<string, int> Rows => rows;
    public IReadOnlyList<RandomParameter> Parameters => parameters;
    public IReadOnlyList<SlotChange[]> Changes => changes;

    /// <summary>Row of a net, made at first use.</summary>
    public int Row(string net)
    {
        if (!rows.TryGetValue(net, out var row))
        {
            rows[net] = row = Equations.NewUnknown();
            nets.Add(net);
        }

        return row;
    }

    /// <summary>True when anything but this one pin is on the net.</summary>
    public bool IsShared(string net) =>
        net.StartsWith("MAINS.", StringComparison.Ordinal) || net == NetTable.Ground || pinsOnNet.GetValueOrDefault(net) > 1;

    /// <summary>A conductance between two rows in a slot of its own; returns the slot.</summary>
    public int Conductance(int plus, int minus, double siemens)
    {
        var slot = Equations.NewSlot(siemens);
        Equations.AddBranch(BranchKind.Conductance, plus, minus, slot);
        return slot;
    }

    public void Vary(string part, string what, double sigma, params SlotChange[] moved)
    {
        if (sigma > 0 && moved.Length > 0)
        {
            parameters.Add(new RandomParameter(part, what, sigma));
            changes.Add(moved);
        }
    }

    /// <summary>The turns of a winding differ from specimen to specimen: to first order a sine in series with it, laid for a core that swings in full.</summary>
    public void VaryTurns(TurnsSpread turns, params SlotChange[] moved)
    {
        Turns[parameters.Count] = turns;
        Vary(turns.Part, $"volts of {turns.Winding}", turns.Sigma, moved);
    }

    /// <summary>Lays constants of a law in slots, in order; returns the first.</summary>
    public int Constants(params double[] values)
    {
        var first = Equations.NewSlot(values[0]);
        foreach (var value in values.Skip(1))
        {
            Equations.NewSlot(value);
        }

        return first;
    }
}
