using System.Numerics;
using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// How the slopes of every element bend with its operating point and with the constants of its law, by differences. It carries what moves a bias over to
/// what a small signal makes of it. Elements with a pole (op-amps) are left out: their loop, not their slope, sets what a signal makes, and no step is
/// small enough.
/// </summary>
internal sealed class SlopeBends
{
    /// <summary>Volts either way: small beside the 26 mV over which a junction bends.</summary>
    private const double Nudge = 1e-3;

    /// <summary>Part of a constant's change that is tried either way.</summary>
    private const double Part = 1e-2;

    private readonly Equations equations;
    private readonly Lane[] slots;
    private readonly Lane[] point;

    /// <summary>By element: [(p * ports + q) * ports + k], siemens per volt; null where it is left out.</summary>
    private readonly double[]?[] bends;

    /// <summary>By slot, for the change it was asked for: [p * ports + q], siemens.</summary>
    private readonly Dictionary<SlotChange, double[]> byConstant = [];

    /// <param name="slots">The same world in every lane.</param>
    /// <param name="point">Its operating point.</param>
    public SlopeBends(Equations equations, Lane[] slots, Lane[] point)
    {
        (this.equations, this.slots, this.point) = (equations, slots, point);
        bends = new double[equations.Elements.Count][];
        for (var e = 0; e < bends.Length; e++)
        {
            bends[e] = HasPole(equations.Elements[e].Law) ? null : ByVolts(equations.Elements[e]);
        }
    }

    private static bool HasPole(Law law)
    {
        for (var p = 0; p < law.Ports; p++)
        {
            if (law.PoleConstant(p) >= 0)
            {
                return true;
            }
        }

        return false;
    }

    private double[] ByVolts(Element element)
    {
        var ports = element.Law.Ports;
        var bend = new double[ports * ports * ports];
        Span<Lane> volts = stackalloc Lane[ports];
        Span<Lane> currents = stackalloc Lane[ports];
        Span<Lane> slopes = stackalloc Lane[ports * ports];

        // Two ports at a time, each nudged up in one lane and down in the next.
        for (var k = 0; k < ports; k += 2)
        {
            VoltsOf(element, volts);
            volts[k] += Vector256.Create(Nudge, -Nudge, 0, 0);
            if (k + 1 < ports)
            {
                volts[k + 1] += Vector256.Create(0, 0, Nudge, -Nudge);
            }

            element.Law.Evaluate(volts, slots.AsSpan(element.Slot, element.Law.Constants), currents, slopes);
            for (var s = 0; s < slopes.Length; s++)
            {
                bend[(s * ports) + k] = Difference(in slopes[s], 0) / Nudge;
                if (k + 1 < ports)
                {
                    bend[(s * ports) + k + 1] = Difference(in slopes[s], 2) / Nudge;
                }
            }
        }

        return bend;
    }

    private double[] ByConstant(Element element, SlotChange change)
    {
        var ports = element.Law.Ports;
        Span<Lane> volts = stackalloc Lane[ports];
        Span<Lane> currents = stackalloc Lane[ports];
        Span<Lane> slopes = stackalloc Lane[ports * ports];
        Span<Lane> constants = stackalloc Lane[element.Law.Constants];
        slots.AsSpan(element.Slot, constants.Length).CopyTo(constants);
        ref var constant = ref constants[change.Slot - element.Slot];
        constant += Part * ((change.Relative * constant) + Lanes.All(change.Absolute)) * Vector256.Create(1.0, -1, 0, 0);
        VoltsOf(element, volts);
        element.Law.Evaluate(volts, constants, currents, slopes);
        var bend = new double[slopes.Length];
        for (var s = 0; s < bend.Length; s++)
        {
            bend[s] = Difference(in slopes[s], 0) / Part;
        }

        return bend;
    }

    private void VoltsOf(Element element, Span<Lane> volts)
    {
        var last = element.Rows[^1];
        for (var p = 0; p < volts.Length; p++)
        {
            var row = element.Rows[p];
            volts[p] = row < 0 ? Lanes.Zero : point[row];
            if (last >= 0)
            {
                volts[p] -= point[last];
            }
        }
    }

    /// <summary>Half of what a lane has over the next.</summary>
    private static double Difference(in Lane value, int lane) => (Lanes.Get(in value, lane) - Lanes.Get(in value, lane + 1)) / 2;

    /// <summary>Change of an answer, its adjoint given, for a change of an element's constant at the same volts.</summary>
    public Complex Effect(int index, SlotChange change, Complex[] x, Complex[] adjoint)
    {
        if (bends[index] is null)
        {
            return 0;
        }

        var element = equations.Elements[index];
        if (!byConstant.TryGetValue(change, out var bend))
        {
            byConstant.Add(change, bend = ByConstant(element, change));
        }

        Complex sum = 0;
        var (rows, ports, last) = (element.Rows, element.Law.Ports, element.Rows[^1]);
        for (var p = 0; p < ports; p++)
        {
            for (var q = 0; q < ports; q++)
            {
                sum -= (At(adjoint, rows[p]) - At(adjoint, last)) * bend[(p * ports) + q] * (At(x, rows[q]) - At(x, last));
            }
        }

        return sum;
    }

    /// <summary>By unknown: change of an answer, its adjoint given, for a volt more of the operating point there.</summary>
    public Complex[] Effect(Complex[] x, Complex[] adjoint)
    {
        var effect = new Complex[x.Length];
        for (var e = 0; e < bends.Length; e++)
        {
            if (bends[e] is { } bend)
            {
                Add(equations.Elements[e].Rows, bend, x, adjoint, effect);
            }
        }

        return effect;
    }

    private static void Add(int[] rows, double[] bend, Complex[] x, Complex[] adjoint, Complex[] effect)
    {
        var ports = rows.Length - 1;
        var last = rows[^1];
        for (var p = 0; p < ports; p++)
        {
            var reached = At(adjoint, rows[p]) - At(adjoint, last);
            for (var q = 0; q < ports; q++)
            {
                var weight = -reached * (At(x, rows[q]) - At(x, last));
                for (var k = 0; k < ports; k++)
                {
                    var own = weight * bend[(((p * ports) + q) * ports) + k];
                    Put(effect, rows[k], own);
                    Put(effect, last, -own);
                }
            }
        }
    }

    private static Complex At(Complex[] v, int row) => row < 0 ? 0 : v[row];

    private static void Put(Complex[] effect, int row, Complex value)
    {
        if (row >= 0)
        {
            effect[row] += value;
        }
    }
}
