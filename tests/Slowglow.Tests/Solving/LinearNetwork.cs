using CsCheck;
using Slowglow.Solving;

namespace Slowglow.Tests.Solving;

/// <summary>Resistors, capacitors and coils in a connected network with a source in series with every third resistor.</summary>
/// <param name="Equations">Its structure.</param>
/// <param name="Slots">Its values.</param>
/// <param name="Sources">Slots of the sources' volts.</param>
/// <param name="Branches">Branches whose main value may be moved.</param>
internal sealed record LinearNetwork(Equations Equations, double[] Slots, List<int> Sources, List<int> Branches)
{
    public static readonly Gen<LinearNetwork> Any =
        from nets in Gen.Int[2, 14]
        from tree in Gen.Double[1, 6].Array[nets]
        from parents in Gen.Int[-1, nets - 2].Array[nets]
        from more in Gen.Select(Gen.Int[-1, nets - 1], Gen.Int[-1, nets - 1], Gen.Int[0, 2], Gen.Double[0, 5]).Array[0, 2 * nets]
        from volts in Gen.Double[-30, 30].Array[nets]
        select Build(tree, parents, more, volts);

    private static LinearNetwork Build(double[] tree, int[] parents, (int, int, int, double)[] more, double[] volts)
    {
        var b = new EquationsBuilder();
        List<int> sources = [];
        List<int> branches = [];
        foreach (var _ in tree)
        {
            b.NewUnknown();
        }

        for (var n = 0; n < tree.Length; n++)
        {
            var source = n % 3 == 0 ? b.NewSlot(volts[n]) : -1;
            if (source >= 0)
            {
                sources.Add(source);
            }

            branches.Add(
                b.AddBranch(BranchKind.Conductance, n, Math.Min(parents[n], n - 1), b.NewSlot(Math.Pow(10, -tree[n])), source)
            );
        }

        foreach (var (from, to, kind, decade) in more.Where(m => m.Item1 != m.Item2))
        {
            branches.Add(
                kind switch
                {
                    0 => b.AddBranch(BranchKind.Conductance, from, to, b.NewSlot(Math.Pow(10, -1 - decade))),
                    1 => b.AddBranch(BranchKind.Storage, from, to, b.NewSlot(Math.Pow(10, -5 - decade))),
                    _ => b.AddBranch(
                        BranchKind.Flow,
                        from,
                        to,
                        b.NewSlot(Math.Pow(10, decade)),
                        b.NewSlot(Math.Pow(10, decade - 3))
                    ),
                }
            );
        }

        return new LinearNetwork(b.Build(), b.SlotValues(), sources, branches);
    }

    /// <summary>The network with only some of its sources on.</summary>
    public StaticProblem With(Func<int, bool> isOn, params (int Row, double Amps)[] pushed)
    {
        var slots = (double[])Slots.Clone();
        for (var s = 0; s < Sources.Count; s++)
        {
            slots[Sources[s]] *= isOn(s) ? 1 : 0;
        }

        return new StaticProblem
        {
            Slots = slots,
            Start = new double[Equations.Unknowns],
            Pushed = pushed,
        };
    }
}
