using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>Linearises worlds at their means, four at a time. One for each thread.</summary>
internal sealed class MeanEffects
{
    private const int MostPorts = 8;
    private readonly Equations equations;
    private readonly LaneSystem system;
    private readonly ParameterMap map;
    private readonly IReadOnlyList<SlotChange[]> parameters;
    private readonly int[] slopeStart;

    public MeanEffects(Equations equations, IReadOnlyList<SlotChange[]> parameters)
    {
        (this.equations, this.parameters) = (equations, parameters);
        system = new LaneSystem(equations);
        map = new ParameterMap(equations);
        slopeStart = new int[equations.Elements.Count + 1];
        for (var e = 0; e < equations.Elements.Count; e++)
        {
            slopeStart[e + 1] = slopeStart[e] + (equations.Elements[e].Law.Ports * equations.Elements[e].Law.Ports);
        }

        Starts = new int[parameters.Count + 1];
        List<int> rows = [];
        List<int> owners = [];
        for (var p = 0; p < parameters.Count; p++)
        {
            foreach (var change in parameters[p])
            {
                var (use, index, _) = map[change.Slot];
                var touched =
                    use == ParameterMap.Use.None ? []
                    : use == ParameterMap.Use.Constant ? equations.Elements[index].Rows
                    : equations.Branches[index].Rows;
                rows.AddRange(touched);
                owners.AddRange(touched.Select(_ => use == ParameterMap.Use.Constant ? index : -1));
            }

            Starts[p + 1] = rows.Count;
        }

        (Rows, Owners) = ([.. rows], [.. owners]);
    }

    /// <summary>First entry of each parameter in <see cref="Rows"/>, and the end.</summary>
    public int[] Starts { get; }

    /// <summary>Unknowns that the parameters push current into (-1 = ground).</summary>
    public int[] Rows { get; }

    /// <summary>Element behind each entry; -1 for a branch.</summary>
    public int[] Owners { get; }

    /// <summary>First slope of an element in <see cref="MeanPoint.Slopes"/>.</summary>
    public int SlopeOf(int element) => slopeStart[element];

    /// <summary>Up to four worlds by slots and means.</summary>
    public MeanPoint[] At(IReadOnlyList<(double[] Slots, double[] Mean)> worlds)
    {
        for (var lane = 0; lane < Lanes.Width; lane++)
        {
            var (slots, mean) = worlds[Math.Min(lane, worlds.Count - 1)];
            for (var s = 0; s < slots.Length; s++)
            {
                Lanes.Put(ref system.Slots[s], lane, slots[s]);
            }

            for (var r = 0; r < mean.Length; r++)
            {
                Lanes.Put(ref system.X[r], lane, mean[r]);
            }
        }

        system.Elements.Linearise(system.X);
        system.Elements.Evaluate(system.Slots);
        Lane[] siemens = [.. equations.Branches.Select(b => b.Kind == BranchKind.Storage ? Lanes.Zero : system.SiemensOf(b, 0))];
        var slopes = new Lane[slopeStart[^1]];
        for (var e = 0; e < equations.Elements.Count; e++)
        {
            system.Elements.SlopesOf(e).CopyTo(slopes.AsSpan(slopeStart[e]));
        }

        var pushed = Pushed();
        return [.. worlds.Select((_, lane) => new MeanPoint(Of(siemens, lane), Of(slopes, lane), Of(pushed, lane)))];
    }

    private static double[] Of(Lane[] lanes, int lane) => Lanes.Column(lanes, lane);

    private Lane[] Pushed()
    {
        var pushed = new Lane[Rows.Length];
        var at = 0;
        Span<Lane> effect = stackalloc Lane[MostPorts];
        foreach (var changes in parameters)
        {
            foreach (var change in changes)
            {
                var (use, index, constant) = map[change.Slot];
                var amount = (change.Relative * system.Slots[change.Slot]) + Lanes.All(change.Absolute);
                if (use == ParameterMap.Use.Constant)
                {
                    var ports = equations.Elements[index].Law.Ports;
                    system.Elements.ConstantEffect(index, constant, amount, system.Slots, effect[..ports]);
                    for (var p = 0; p < ports; p++)
                    {
                        pushed[at + p] = -effect[p];
                        pushed[at + ports] += effect[p];
                    }

                    at += ports + 1;
                }
                else if (use != ParameterMap.Use.None)
                {
                    var branch = equations.Branches[index];
                    var amps = BranchEffect(use, branch, amount);
                    foreach (var weight in branch.Weights)
                    {
                        pushed[at++] = weight * amps;
                    }
                }
            }
        }

        return pushed;
    }

    /// <summary>Current pushed when a branch's slot moves, at rest: capacitors pass nothing, a sine has no mean.</summary>
    private Lane BranchEffect(ParameterMap.Use use, Branch branch, in Lane amount)
    {
        var u = LaneSystem.Across(branch, system.X);
        return use switch
        {
            ParameterMap.Use.Siemens => -amount * (u - system.SourceOf(branch, 0)),
            ParameterMap.Use.SteadySource => amount * system.Slots[branch.Slot],
            ParameterMap.Use.FlowOhms => amount * u / (system.Slots[branch.Slot] * system.Slots[branch.Slot]),
            _ => Lanes.Zero,
        };
    }
}
