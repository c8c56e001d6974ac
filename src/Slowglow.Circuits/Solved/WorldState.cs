using Slowglow.Sheets.Setups;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>A solved world: everything that probes are answered from.</summary>
internal sealed class WorldState
{
    public required Setup Setup { get; init; }
    public required IReadOnlyList<Fault> Faults { get; init; }
    public required double[] Slots { get; init; }
    public bool Settled { get; set; }

    /// <summary>Mains cycles it took to settle.</summary>
    public int Cycles { get; set; }

    /// <summary>Mean of every unknown.</summary>
    public double[] Mean { get; set; } = [];

    /// <summary>Unknowns over the mains cycle, [step * unknowns + unknown]; one step with the power off.</summary>
    public float[] Wave { get; set; } = [];
    public double[] States { get; set; } = [];
    public double[] End { get; set; } = [];
    public float[] MeanSpread { get; set; } = [];
    public float[] RmsSpread { get; set; } = [];

    /// <summary>As <see cref="CycleProblem.Left"/>.</summary>
    public double[] Left { get; set; } = [];

    /// <summary>What relatives start from; kept by healthy worlds.</summary>
    public CycleReference? Reference { get; set; }

    /// <summary>What the healthy world of the setup draws from the outlet; null where that is not known.</summary>
    public InletCurrent? Inlet { get; set; }

    /// <summary>Its supply for relatives; kept by healthy worlds.</summary>
    public SupplyLine? Supply { get; set; }

    /// <summary>Resistance at rest between unknowns, [row * unknowns + column].</summary>
    public float[] Resistance { get; set; } = [];

    /// <summary>Guess at the crest of the mains, kept for relatives to start from.</summary>
    public double[] Crest { get; set; } = [];
    public int Unknowns => Mean.Length;
    public int Steps => Unknowns == 0 ? 0 : Wave.Length / Unknowns;

    public double MeanAt(int row) => row < 0 ? 0 : Mean[row];

    public double At(int step, int row) => row < 0 ? 0 : Wave[(step * Unknowns) + row];

    /// <summary>Ohms seen between two rows at rest.</summary>
    public double OhmsBetween(int a, int b)
    {
        double R(int r, int c) => r < 0 || c < 0 ? 0 : Resistance[(r * Unknowns) + c];
        return R(a, a) + R(b, b) - R(a, b) - R(b, a);
    }

    /// <summary>Rms between two rows, mean removed.</summary>
    public double RmsBetween(int a, int b)
    {
        var mean = MeanAt(a) - MeanAt(b);
        double sum = 0;
        for (var k = 0; k < Steps; k++)
        {
            var d = At(k, a) - At(k, b) - mean;
            sum += d * d;
        }

        return Steps == 0 ? 0 : Math.Sqrt(sum / Steps);
    }
}
