using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>Volts, currents and slopes of one element at a point; the last terminal is the reference.</summary>
internal sealed class ElementAtRest
{
    private const double Nudge = 1e-6;
    private readonly double[] slopes;
    private readonly double[] constants;

    /// <param name="x">Every unknown.</param>
    public ElementAtRest(Element element, ReadOnlySpan<double> slots, ReadOnlySpan<double> x)
    {
        Element = element;
        var ports = element.Law.Ports;
        constants = slots.Slice(element.Slot, element.Law.Constants).ToArray();
        Volts = new double[ports];
        var reference = At(x, element.Rows[^1]);
        for (var p = 0; p < ports; p++)
        {
            Volts[p] = At(x, element.Rows[p]) - reference;
        }

        var (currents, tangents) = Evaluate(constants);
        Amps = First(currents);
        slopes = First(tangents);
    }

    public Element Element { get; }

    /// <summary>Of every port against the reference.</summary>
    public double[] Volts { get; }

    /// <summary>Into every port.</summary>
    public double[] Amps { get; }

    /// <summary>d current p / d voltage q, siemens.</summary>
    public double Slope(int p, int q) => slopes[(p * Volts.Length) + q];

    public double Constant(int index) => constants[index];

    /// <summary>Change of the current into every port for all of a constant, at the same volts: its slope there.</summary>
    public double[] ByConstant(int index)
    {
        var moved = (double[])constants.Clone();
        moved[index] *= 1 + Nudge;
        var (currents, _) = Evaluate(moved);
        return [.. currents.Select((i, p) => (Lanes.Get(i, 0) - Amps[p]) / Nudge)];
    }

    private (Lane[] Currents, Lane[] Slopes) Evaluate(double[] law)
    {
        var ports = Volts.Length;
        var currents = new Lane[ports];
        var tangents = new Lane[ports * ports];
        Element.Law.Evaluate([.. Volts.Select(Lanes.All)], [.. law.Select(Lanes.All)], currents, tangents);
        return (currents, tangents);
    }

    private static double[] First(Lane[] lanes) => Array.ConvertAll(lanes, l => Lanes.Get(l, 0));

    private static double At(ReadOnlySpan<double> x, int row) => row < 0 ? 0 : x[row];
}
