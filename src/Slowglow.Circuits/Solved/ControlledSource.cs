using System.Numerics;
using Slowglow.Circuits.Models.OpAmp;
using Slowglow.Circuits.Models.Transistor;
using Slowglow.Circuits.Models.Valve;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>The part of an element that amplifies: what its control port does to the currents of its other ports.</summary>
internal sealed class ControlledSource
{
    /// <summary>Second pole of an op-amp over its gain-bandwidth: leaves 60 degrees at unity gain (common practice, no source).</summary>
    private const double SecondPole = 1.7;
    private readonly ElementAtRest at;
    private readonly int control;

    private ControlledSource(int element, ElementAtRest at, int control) =>
        (Element, this.at, this.control) = (element, at, control);

    public int Element { get; }
    public bool IsOpAmp => at.Element.Law is OpAmpLaw;

    /// <summary>All that amplify at an operating point.</summary>
    public static IEnumerable<ControlledSource> In(Equations equations, double[] slots, double[] x)
    {
        for (var e = 0; e < equations.Elements.Count; e++)
        {
            int? control = equations.Elements[e].Law switch
            {
                OpAmpLaw => 0,
                TriodeLaw or PentodeLaw or BjtLaw or FieldEffectLaw => 1,
                _ => null,
            };
            if (control is { } port)
            {
                yield return new ControlledSource(e, new ElementAtRest(equations.Elements[e], slots, x), port);
            }
        }
    }

    /// <summary>
    /// Return ratio: what comes back to the control for one that leaves it. With the source in the matrix its determinant is F times that of
    /// the matrix without (F the return difference), and F = 1 / (1 - z), where z is the control's answer to the source's own currents.
    /// </summary>
    public Complex ReturnRatio(SmallSignalSolver signal, double hertz)
    {
        var z = Effect(Control(signal), hertz);
        if (!IsOpAmp)
        {
            return z / (1 - z);
        }

        var second = SecondPole * at.Constant((int)OpAmpLaw.Constant.PoleHertz) * at.Constant((int)OpAmpLaw.Constant.Gain);
        return z / (1 - z) / new Complex(1, hertz / second);
    }

    /// <summary>How the volts of the control answer a current into each unknown.</summary>
    public Complex[] Control(SmallSignalSolver signal)
    {
        var rows = at.Element.Rows;
        return signal.Adjoint(rows[control], IsOpAmp ? rows[1] : rows[^1]);
    }

    /// <summary>What a volt at this source's control does, through its currents, to the volts that an adjoint belongs to.</summary>
    public Complex Effect(Complex[] adjoint, double hertz)
    {
        var rows = at.Element.Rows;
        Complex z = 0;
        for (var p = 0; p < at.Volts.Length; p++)
        {
            if (p != control && !(IsOpAmp && p == 1))
            {
                z += at.Slope(p, control) * (Value(adjoint, rows[p]) - Value(adjoint, rows[^1]));
            }
        }

        return IsOpAmp ? z / new Complex(1, hertz / at.Constant((int)OpAmpLaw.Constant.PoleHertz)) : z;
    }

    private static Complex Value(Complex[] v, int row) => row < 0 ? 0 : v[row];
}
