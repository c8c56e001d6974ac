using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>The resistive network as capacitors see it.</summary>
internal sealed class PortsQuestion(AskedWorld asked)
{
    public double[,] Resistance(IReadOnlyList<string> capacitors, double[] volts)
    {
        var world = asked.State;
        var rows = capacitors
            .Select(c => asked.Circuit.Sheet.Parts.First(p => p.Designator == c).Pins)
            .Select(p => (Row(p[0].Net), Row(p[1].Net)))
            .ToArray();
        float[] wave = [.. volts.Select(v => (float)v)];
        var all = new TransferResistance(asked.Circuit.Equations).Of([(world.Slots, wave)])[0];
        double At(int r, int c) => r < 0 || c < 0 ? 0 : all[(r * world.Unknowns) + c];
        var ohms = new double[rows.Length, rows.Length];
        for (var a = 0; a < rows.Length; a++)
        {
            for (var b = 0; b < rows.Length; b++)
            {
                var ((pa, ma), (pb, mb)) = (rows[a], rows[b]);
                ohms[a, b] = At(pa, pb) - At(pa, mb) - At(ma, pb) + At(ma, mb);
            }
        }

        return ohms;
    }

    private int Row(string net) => asked.Circuit.Rows.GetValueOrDefault(net, -1);
}
