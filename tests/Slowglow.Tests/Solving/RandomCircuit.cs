using CsCheck;
using Slowglow.Circuits.Models.Diode;
using Slowglow.Circuits.Models.Transistor;
using Slowglow.Circuits.Models.Valve;
using Slowglow.Solving;

namespace Slowglow.Tests.Solving;

/// <summary>A connected circuit made at random: a source on net 0, a tree of resistors and more between, diodes, triodes, transistors.</summary>
/// <param name="Equations">Its structure.</param>
/// <param name="Slots">Its values.</param>
/// <param name="Resistors">Slots of the resistors' siemens.</param>
/// <param name="Source">Slot of the source's volts.</param>
internal sealed record RandomCircuit(Equations Equations, double[] Slots, List<int> Resistors, int Source)
{
    public const double SourceSiemens = 0.1;

    public static readonly Gen<RandomCircuit> Any = Scalable().Select(made => made(1));

    /// <summary>The same circuit twice, the second with every impedance (resistors, junctions, valves, the source's own) times a factor.</summary>
    public static readonly Gen<(RandomCircuit Plain, RandomCircuit Scaled)> Pairs = Gen.Select(
        Scalable(),
        Gen.Double[0.1, 10],
        (made, factor) => (made(1), made(factor))
    );

    private static Gen<Func<double, RandomCircuit>> Scalable() =>
        from nets in Gen.Int[3, 14]
        from tree in Gen.Double[2, 6].Array[nets]
        from parents in Gen.Int[-1, nets - 2].Array[nets]
        from more in Gen.Select(Gen.Int[-1, nets - 1], Gen.Int[-1, nets - 1], Gen.Double[2, 6]).Array[0, nets]
        from diodes in Gen.Select(Gen.Int[-1, nets - 1], Gen.Int[-1, nets - 1]).Array[0, 4]
        from threes in Gen.Select(Gen.Bool, Gen.Int[0, nets - 1], Gen.Int[-1, nets - 1], Gen.Int[-1, nets - 1]).Array[0, 4]
        from volts in Gen.Double[-40, 300]
        select (Func<double, RandomCircuit>)(k => Build(tree, parents, more, diodes, threes, volts, k));

    private static RandomCircuit Build(
        double[] tree,
        int[] parents,
        (int, int, double)[] more,
        (int, int)[] diodes,
        (bool, int, int, int)[] threes,
        double volts,
        double k
    )
    {
        var b = new EquationsBuilder();
        List<int> resistors = [];
        for (var n = 0; n < tree.Length; n++)
        {
            b.NewUnknown();
        }

        void Resistor(int from, int to, double exponent)
        {
            if (from != to)
            {
                resistors.Add(b.NewSlot(Math.Pow(10, -exponent) / k));
                b.AddBranch(BranchKind.Conductance, from, to, resistors[^1]);
            }
        }

        var own = b.NewSlot(SourceSiemens / k);
        var source = b.NewSlot(volts);
        b.AddBranch(BranchKind.Conductance, 0, -1, own, source);
        for (var n = 0; n < tree.Length; n++)
        {
            Resistor(n, Math.Min(parents[n], n - 1), tree[n]);
        }

        foreach (var (from, to, exponent) in more)
        {
            Resistor(from, to, exponent);
        }

        foreach (var (anode, cathode) in diodes.Where(d => d.Item1 != d.Item2))
        {
            b.AddElement(new DiodeLaw(), [anode, cathode], Constants(b, 2.5e-9 / k, 1.75, 0.6 * k, 1e5, 1, 1e-6 * k, 1));
        }

        foreach (
            var (valve, first, second, third) in threes.Where(t => t.Item2 != t.Item4 && t.Item2 != t.Item3 && t.Item3 != t.Item4)
        )
        {
            // Koren's 12AX7 (Glass Audio 8(5), 1996); an ordinary small npn.
            b.AddElement(
                valve ? new TriodeLaw() : new BjtLaw(),
                [first, second, third],
                valve
                    ? Constants(b, 100, 1.4, 1060 * k, 600, 300, 0, 6e-4 / k, 10, 1.3, 1)
                    : Constants(b, 1, 1e-14 / k, 200, 4, 100, 1, 1, 1)
            );
        }

        return new RandomCircuit(b.Build(), b.SlotValues(), resistors, source);
    }

    private static int Constants(EquationsBuilder b, params double[] values)
    {
        var first = b.NewSlot(values[0]);
        foreach (var value in values.Skip(1))
        {
            b.NewSlot(value);
        }

        return first;
    }

    public StaticProblem Problem(params (int Slot, double Value)[] changes)
    {
        var slots = (double[])Slots.Clone();
        foreach (var (slot, value) in changes)
        {
            slots[slot] = value;
        }

        return new StaticProblem { Slots = slots, Start = new double[Equations.Unknowns] };
    }
}
