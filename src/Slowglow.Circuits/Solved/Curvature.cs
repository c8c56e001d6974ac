using System.Numerics;
using Slowglow.Circuits.Building;

namespace Slowglow.Circuits.Solved;

/// <summary>
/// Which element makes the distortion of a loud signal: what its currents differ from their tangent drives the linear rest of the circuit,
/// and reaches the output through the adjoint.
/// </summary>
internal sealed class Curvature(AskedWorld asked, Fixtures.PathFixture path, ElementAtRest[] rest)
{
    private static readonly int[] Orders = [2, 3];

    /// <summary>The port whose current takes the largest part in the second and third harmonic; null when none does.</summary>
    public (int Element, int Port)? Worst(LoudSignal signal)
    {
        (int Element, int Port)[] ports =
        [
            .. rest.SelectMany((e, k) => Enumerable.Range(0, e.Volts.Length).Select(p => (Element: k, Port: p))),
        ];
        var shares = new double[ports.Length];
        foreach (var order in Orders)
        {
            var sweep = new SignalSweep(asked, path).WithRailsHeld().At(order * SignalFollower.Hertz);
            var adjoint = sweep.Signal.Adjoint(path.Out, -1);
            var whole = signal.Harmonic(path.Out, order);
            for (var k = 0; k < ports.Length; k++)
            {
                shares[k] += (
                    Reaching(rest[ports[k].Element], ports[k].Port, signal, order, adjoint) * Complex.Conjugate(whole)
                ).Real;
            }
        }

        var worst = shares.Length == 0 ? -1 : Array.IndexOf(shares, shares.Max());
        return worst >= 0 && shares[worst] > 0 ? ports[worst] : null;
    }

    private static Complex Reaching(ElementAtRest rest, int port, LoudSignal signal, int order, Complex[] adjoint)
    {
        var element = rest.Element;
        Complex residual = 0;
        for (var k = 0; k < signal.Count; k++)
        {
            var now = new ElementAtRest(element, signal.Slots, signal.Unknowns(k));
            var turn = Complex.FromPolarCoordinates(Math.Sqrt(2) / signal.Count, -2 * Math.PI * order * (k + 1) / signal.Count);
            residual += turn * (now.Amps[port] - Tangent(rest, now, port));
        }

        return -residual * (At(adjoint, element.Rows[port]) - At(adjoint, element.Rows[^1]));
    }

    private static double Tangent(ElementAtRest rest, ElementAtRest now, int port)
    {
        var amps = rest.Amps[port];
        for (var q = 0; q < rest.Volts.Length; q++)
        {
            amps += rest.Slope(port, q) * (now.Volts[q] - rest.Volts[q]);
        }

        return amps;
    }

    private static Complex At(Complex[] v, int row) => row < 0 ? 0 : v[row];
}
