using System.Numerics;
using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// Small sine signals about an operating point: one complex matrix at one frequency, factored once, asked for the response to a source
/// and, by its transpose, for how that response moves with every slot. One world at a time.
/// </summary>
public sealed class SmallSignalSolver
{
    private readonly Equations equations;
    private readonly LaneSystem system;
    private readonly Complex[] matrix;
    private SlopeBends? bends;

    public SmallSignalSolver(Equations equations)
    {
        this.equations = equations;
        system = new LaneSystem(equations);
        matrix = new Complex[equations.Pattern.Entries];
    }

    /// <summary>
    /// Takes a world's slots and its operating point, and factors the matrix at a frequency (hertz). Sources are at rest; drive with
    /// <see cref="Respond"/>.
    /// </summary>
    public void Prepare(ReadOnlySpan<double> slots, ReadOnlySpan<double> operatingPoint, double frequency)
    {
        for (var s = 0; s < slots.Length; s++)
        {
            system.Slots[s] = Lanes.All(slots[s]);
        }

        for (var r = 0; r < operatingPoint.Length; r++)
        {
            system.X[r] = Lanes.All(operatingPoint[r]);
        }

        system.Elements.Linearise(system.X);
        system.Elements.Evaluate(system.Slots);
        bends = null;
        Assemble(2 * Math.PI * frequency, frequency);
        Factor();
    }

    private void Assemble(double omega, double frequency)
    {
        Array.Clear(matrix);
        for (var r = 0; r < equations.Unknowns; r++)
        {
            matrix[equations.Pattern.Diagonal[r]] += LaneSystem.Leak;
        }

        foreach (var branch in equations.Branches.Concat(equations.Strays))
        {
            var admittance = AdmittanceOf(branch, omega);
            for (var a = 0; a < branch.Rows.Length; a++)
            {
                for (var b = 0; b < branch.Rows.Length; b++)
                {
                    matrix[equations.Pattern.PositionOf(branch.Rows[a], branch.Rows[b])] +=
                        branch.Weights[a] * branch.Weights[b] * admittance;
                }
            }
        }

        for (var e = 0; e < equations.Elements.Count; e++)
        {
            AssembleElement(e, frequency);
        }
    }

    private Complex AdmittanceOf(Branch branch, double omega)
    {
        double Slot(int s) => system.Slots[s].GetElement(0);
        return branch.Kind switch
        {
            BranchKind.Conductance => Slot(branch.Slot),
            BranchKind.Storage => new Complex(0, omega * Slot(branch.Slot)),
            _ => 1 / new Complex(Slot(branch.Slot), omega * Slot(branch.SteadySlot)),
        };
    }

    private void AssembleElement(int e, double frequency)
    {
        var element = equations.Elements[e];
        var rows = element.Rows;
        var ports = element.Law.Ports;
        var slopes = system.Elements.SlopesOf(e);
        for (var p = 0; p < ports; p++)
        {
            for (var q = 0; q < ports; q++)
            {
                Complex g = slopes[(p * ports) + q].GetElement(0);
                if (element.Law.PoleConstant(q) is var pole and >= 0)
                {
                    g /= new Complex(1, frequency / system.Slots[element.Slot + pole].GetElement(0));
                }

                Add(rows[p], rows[q], g);
                Add(rows[p], rows[^1], -g);
                Add(rows[^1], rows[q], -g);
                Add(rows[^1], rows[^1], g);
            }
        }
    }

    private void Add(int row, int column, Complex value)
    {
        if (row >= 0 && column >= 0)
        {
            matrix[equations.Pattern.PositionOf(row, column)] += value;
        }
    }

    private void Factor()
    {
        var pattern = equations.Pattern;
        for (var k = 0; k < pattern.Size; k++)
        {
            var reciprocal = 1 / matrix[pattern.Pivot[k]];
            var u0 = pattern.UpperStart[k];
            for (var n = pattern.LowerStart[k]; n < pattern.LowerStart[k + 1]; n++)
            {
                var l = matrix[pattern.LowerPosition[n]] *= reciprocal;
                for (var m = 0; m < pattern.UpperStart[k + 1] - u0; m++)
                {
                    matrix[pattern.Target[pattern.TargetStart[n] + m]] -= l * matrix[pattern.UpperPosition[u0 + m]];
                }
            }
        }
    }

    /// <summary>Response of every unknown to one volt in series with a conductance branch.</summary>
    public Complex[] Respond(int sourceBranch)
    {
        var branch = equations.Branches[sourceBranch];
        var x = new Complex[equations.Unknowns];
        for (var k = 0; k < branch.Rows.Length; k++)
        {
            x[branch.Rows[k]] += branch.Weights[k] * system.Slots[branch.Slot].GetElement(0);
        }

        Solve(x);
        return x;
    }

    private void Solve(Complex[] x)
    {
        var pattern = equations.Pattern;
        for (var k = 0; k < pattern.Size; k++)
        {
            var y = x[pattern.Order[k]];
            for (var n = pattern.LowerStart[k]; n < pattern.LowerStart[k + 1]; n++)
            {
                x[pattern.LowerRow[n]] -= matrix[pattern.LowerPosition[n]] * y;
            }
        }

        for (var k = pattern.Size - 1; k >= 0; k--)
        {
            var sum = x[pattern.Order[k]];
            for (var n = pattern.UpperStart[k]; n < pattern.UpperStart[k + 1]; n++)
            {
                sum -= matrix[pattern.UpperPosition[n]] * x[pattern.UpperColumn[n]];
            }

            x[pattern.Order[k]] = sum / matrix[pattern.Pivot[k]];
        }
    }

    /// <summary>Row of the inverse: how the volts between two unknowns (-1 = ground) answer a current into each unknown.</summary>
    public Complex[] Adjoint(int plus, int minus)
    {
        var pattern = equations.Pattern;
        var x = new Complex[equations.Unknowns];
        if (plus >= 0)
        {
            x[plus] += 1;
        }

        if (minus >= 0)
        {
            x[minus] -= 1;
        }

        for (var k = 0; k < pattern.Size; k++)
        {
            var y = x[pattern.Order[k]] / matrix[pattern.Pivot[k]];
            x[pattern.Order[k]] = y;
            for (var n = pattern.UpperStart[k]; n < pattern.UpperStart[k + 1]; n++)
            {
                x[pattern.UpperColumn[n]] -= matrix[pattern.UpperPosition[n]] * y;
            }
        }

        for (var k = pattern.Size - 1; k >= 0; k--)
        {
            var sum = x[pattern.Order[k]];
            for (var n = pattern.LowerStart[k]; n < pattern.LowerStart[k + 1]; n++)
            {
                sum -= matrix[pattern.LowerPosition[n]] * x[pattern.LowerRow[n]];
            }

            x[pattern.Order[k]] = sum;
        }

        return x;
    }

    /// <summary>
    /// First-order change of an answer (its adjoint given) for a change of a branch's slot, by the response <paramref name="x"/>.
    /// The operating point is held.
    /// </summary>
    public Complex BranchEffect(int branchIndex, double relativeSlot, double frequency, Complex[] x, Complex[] adjoint)
    {
        var branch = equations.Branches[branchIndex];
        Complex u = 0,
            a = 0;
        for (var k = 0; k < branch.Rows.Length; k++)
        {
            u += branch.Weights[k] * x[branch.Rows[k]];
            a += branch.Weights[k] * adjoint[branch.Rows[k]];
        }

        var slot = system.Slots[branch.Slot].GetElement(0) * relativeSlot;
        var omega = 2 * Math.PI * frequency;
        var admittance = AdmittanceOf(branch, omega);
        Complex change = branch.Kind switch
        {
            BranchKind.Conductance => slot,
            BranchKind.Storage => new Complex(0, omega * slot),
            _ => -admittance * admittance * slot,
        };
        return -a * change * u;
    }

    /// <summary>By unknown: first-order change of an answer for a volt more of the operating point there, everything else held.</summary>
    public Complex[] PointEffect(Complex[] x, Complex[] adjoint) =>
        (bends ??= new(equations, system.Slots, system.X)).Effect(x, adjoint);

    /// <summary>
    /// The same for a change of a constant of an element's law. Nothing for elements with a pole: their loop, not their slopes, sets what a signal makes.
    /// </summary>
    public Complex ConstantEffect(int elementIndex, SlotChange change, Complex[] x, Complex[] adjoint) =>
        (bends ??= new(equations, system.Slots, system.X)).Effect(elementIndex, change, x, adjoint);
}
