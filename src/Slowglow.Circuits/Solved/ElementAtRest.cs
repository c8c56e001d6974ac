using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>Volts, currents and slopes of one element at a point; the last terminal is the reference.</summary>
internal sealed class ElementAtRest
{
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

        Lane[] volts = [.. Volts.Select(Lanes.All)];
        var currents = new Lane[ports];
        var tangents = new Lane[ports * ports];
        element.Law.Evaluate(volts, [.. constants.Select(Lanes.All)], currents, tangents);
        Amps = [.. currents.Select(i => Lanes.Get(i, 0))];
        slopes = [.. tangents.Select(g => Lanes.Get(g, 0))];
    }

    public Element Element { get; }

    /// <summary>Of every port against the reference.</summary>
    public double[] Volts { get; }

    /// <summary>Into every port.</summary>
    public double[] Amps { get; }

    /// <summary>d current p / d voltage q, siemens.</summary>
    public double Slope(int p, int q) => slopes[(p * Volts.Length) + q];

    public double Constant(int index) => constants[index];

    private static double At(ReadOnlySpan<double> x, int row) => row < 0 ? 0 : x[row];
}
