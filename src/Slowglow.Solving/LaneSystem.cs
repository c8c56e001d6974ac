using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// Working storage for four worlds of one structure: slots, linear part, elements linearised at their last voltages, factors.
/// Not thread-safe: one for each worker.
/// </summary>
internal sealed class LaneSystem
{
    /// <summary>Siemens from every unknown to ground: keeps the matrix regular; a net held by nothing else is reported as floating.</summary>
    public const double Leak = 1e-12;
    private const int MostPorts = 8;
    private const double CurrentTolerance = 1e-10;

    /// <summary>No part carries so many amperes: where tangents this steep agree, it is for want of digits.</summary>
    private const double Absurd = 1e6;
    private const double RelativeTolerance = 1e-6;

    private readonly Element[] elements;
    private readonly int[][] branchPositions;
    private readonly int[][] elementPositions;
    private readonly int[] portStart;
    private readonly int[] slopeStart;
    private readonly Lane[] portVolts;
    private readonly Lane[] portNew;
    private readonly Lane[] currents;
    private readonly Lane[] slopes;
    private readonly Lane[] predicted;

    public LaneSystem(Equations equations)
    {
        Equations = equations;
        elements = [.. equations.Elements];
        Factors = new LaneFactors(equations.Pattern);
        Slots = new Lane[equations.Slots];
        X = new Lane[equations.Unknowns];
        RightSide = new Lane[equations.Unknowns];
        branchPositions = [.. equations.Branches.Select(b => PositionsOf(b.Rows, b.Rows))];
        elementPositions = [.. equations.Elements.Select(e => PositionsOf(e.Rows, e.Rows))];
        portStart = Starts(equations.Elements.Select(e => e.Law.Ports));
        slopeStart = Starts(equations.Elements.Select(e => e.Law.Ports * e.Law.Ports));
        portVolts = new Lane[portStart[^1]];
        portNew = new Lane[portStart[^1]];
        currents = new Lane[portStart[^1]];
        predicted = new Lane[portStart[^1]];
        slopes = new Lane[slopeStart[^1]];
    }

    public Equations Equations { get; }
    public LaneFactors Factors { get; }
    public Lane[] Slots { get; }

    /// <summary>Latest solution.</summary>
    public Lane[] X { get; }
    public Lane[] RightSide { get; }

    /// <summary>Extra siemens on the diagonal, for stepping.</summary>
    public Lane Extra { get; set; } = Lanes.Zero;

    private int[] PositionsOf(int[] rows, int[] columns) =>
        [.. rows.SelectMany(_ => columns, (r, c) => r < 0 || c < 0 ? -1 : Equations.Pattern.PositionOf(r, c))];

    private static int[] Starts(IEnumerable<int> lengths)
    {
        List<int> starts = [0];
        starts.AddRange(lengths.Select(l => starts[^1] + l));
        return [.. starts];
    }

    /// <summary>Sum of the branch's weights times the unknowns in <paramref name="x"/>.</summary>
    public static Lane Across(Branch branch, ReadOnlySpan<Lane> x)
    {
        var sum = Lanes.Zero;
        for (var k = 0; k < branch.Rows.Length; k++)
        {
            sum += branch.Weights[k] * x[branch.Rows[k]];
        }

        return sum;
    }

    /// <summary>Adds a current that the branch drives into its rows to the right side.</summary>
    public static void Push(Branch branch, Lane current, Span<Lane> rightSide)
    {
        for (var k = 0; k < branch.Rows.Length; k++)
        {
            rightSide[branch.Rows[k]] += branch.Weights[k] * current;
        }
    }

    /// <summary>Adds siemens of a branch to a matrix.</summary>
    public void Stamp(int branch, Lane siemens, Lane[] matrix)
    {
        var weights = Equations.Branches[branch].Weights;
        var positions = branchPositions[branch];
        var n = weights.Length;
        for (var a = 0; a < n; a++)
        {
            for (var b = 0; b < n; b++)
            {
                matrix[positions[(a * n) + b]] += weights[a] * weights[b] * siemens;
            }
        }
    }

    /// <summary>Siemens of a branch when states change at <paramref name="rate"/> per second (0 = at rest).</summary>
    public Lane SiemensOf(Branch branch, double rate) =>
        branch.Kind switch
        {
            BranchKind.Conductance => Slots[branch.Slot],
            BranchKind.Storage => rate * Slots[branch.Slot],
            _ => Lanes.One / (Slots[branch.Slot] + (rate * Slots[branch.SteadySlot])),
        };

    /// <summary>The linear part of the matrix for a rate of change.</summary>
    public void AssembleLinear(double rate, Lane[] matrix)
    {
        Array.Clear(matrix);
        var branches = Equations.Branches;
        for (var b = 0; b < branches.Count; b++)
        {
            Stamp(b, SiemensOf(branches[b], rate), matrix);
        }

        var leak = Lanes.All(Leak) + Extra;
        for (var r = 0; r < Equations.Unknowns; r++)
        {
            matrix[Equations.Pattern.PositionOf(r, r)] += leak;
        }
    }

    /// <summary>Right side of the sources, with the sine at <paramref name="swing"/> and everything times <paramref name="scale"/>.</summary>
    public void AssembleSources(double swing, Lane scale, Lane[] rightSide)
    {
        Array.Clear(rightSide);
        foreach (var branch in Equations.Branches)
        {
            if (branch.Kind == BranchKind.Conductance && (branch.SteadySlot >= 0 || branch.SwingSlot >= 0))
            {
                Push(branch, scale * Slots[branch.Slot] * SourceOf(branch, swing), rightSide);
            }
        }
    }

    /// <summary>Volts in series with a conductance branch.</summary>
    public Lane SourceOf(Branch branch, double swing)
    {
        var volts = branch.SteadySlot >= 0 ? Slots[branch.SteadySlot] : Lanes.Zero;
        return branch.SwingSlot >= 0 ? volts + (swing * Slots[branch.SwingSlot]) : volts;
    }

    /// <summary>Takes the port voltages of one lane (or all, with lane &lt; 0) from <paramref name="x"/> as the point to linearise at.</summary>
    public void Linearise(ReadOnlySpan<Lane> x, int lane = -1)
    {
        for (var e = 0; e < elements.Length; e++)
        {
            var rows = elements[e].Rows;
            var reference = At(x, rows[^1]);
            for (var p = 0; p < rows.Length - 1; p++)
            {
                var u = At(x, rows[p]) - reference;
                ref var target = ref portVolts[portStart[e] + p];
                if (lane < 0)
                {
                    target = u;
                }
                else
                {
                    Lanes.Put(ref target, lane, u.GetElement(lane));
                }
            }
        }
    }

    private static Lane At(ReadOnlySpan<Lane> x, int row) => row < 0 ? Lanes.Zero : x[row];

    /// <summary>Evaluates all elements where they were linearised.</summary>
    public void Evaluate()
    {
        for (var e = 0; e < elements.Length; e++)
        {
            var element = elements[e];
            element.Law.Evaluate(
                portVolts.AsSpan(portStart[e], element.Law.Ports),
                Slots.AsSpan(element.Slot, element.Law.Constants),
                currents.AsSpan(portStart[e], element.Law.Ports),
                slopes.AsSpan(slopeStart[e], element.Law.Ports * element.Law.Ports)
            );
        }
    }

    /// <summary>Change of an element's currents when one constant changes by a small amount, over that amount times <paramref name="amount"/>.</summary>
    public void ConstantEffect(int element, int constant, Lane amount, Span<Lane> effect)
    {
        // Small enough that an amplifier of a million stays on its tangent, the ten microamperes of its cross-over included.
        const double Fraction = 1e-11;
        var use = elements[element];
        var ports = use.Law.Ports;
        Span<Lane> constants = stackalloc Lane[use.Law.Constants];
        Span<Lane> unused = stackalloc Lane[ports * ports];
        Slots.AsSpan(use.Slot, use.Law.Constants).CopyTo(constants);
        constants[constant] += Fraction * amount;
        use.Law.Evaluate(portVolts.AsSpan(portStart[element], ports), constants, effect[..ports], unused);
        for (var p = 0; p < ports; p++)
        {
            effect[p] = (effect[p] - currents[portStart[element] + p]) * Lanes.All(1 / Fraction);
        }
    }

    /// <summary>Adds the tangents of all elements, times a share, to the matrix and their remainders to the right side.</summary>
    public void StampElements(Lane[] matrix, Span<Lane> rightSide, double share = 1)
    {
        for (var e = 0; e < elements.Length; e++)
        {
            StampElement(e, matrix, rightSide, share);
        }
    }

    private void StampElement(int e, Lane[] matrix, Span<Lane> rightSide, double share)
    {
        var rows = elements[e].Rows;
        var n = rows.Length;
        var positions = elementPositions[e];
        var total = Lanes.Zero;
        for (var p = 0; p < n - 1; p++)
        {
            var remainder = -share * currents[portStart[e] + p];
            var sum = Lanes.Zero;
            for (var q = 0; q < n - 1; q++)
            {
                var g = share * slopes[slopeStart[e] + (p * (n - 1)) + q];
                remainder += g * portVolts[portStart[e] + q];
                sum += g;
                AddTo(matrix, positions[(p * n) + q], g);
                AddTo(matrix, positions[((n - 1) * n) + q], -g);
            }

            AddTo(matrix, positions[(p * n) + n - 1], -sum);
            AddTo(matrix, positions[((n - 1) * n) + n - 1], sum);
            if (rows[p] >= 0)
            {
                rightSide[rows[p]] += remainder;
            }

            total += remainder;
        }

        if (rows[^1] >= 0)
        {
            rightSide[rows[^1]] -= total;
        }
    }

    private static void AddTo(Lane[] matrix, int position, Lane value)
    {
        if (position >= 0)
        {
            matrix[position] += value;
        }
    }

    /// <summary>Moves the points of linearisation to the new solution as far as the laws allow, remembering what the tangents foretold.</summary>
    public void Advance()
    {
        Span<Lane> room = stackalloc Lane[MostPorts];
        for (var e = 0; e < elements.Length; e++)
        {
            var element = elements[e];
            var ports = element.Law.Ports;
            var start = portStart[e];
            var reference = At(X, element.Rows[^1]);
            var before = room[..ports];
            for (var p = 0; p < ports; p++)
            {
                before[p] = portVolts[start + p];
                portNew[start + p] = At(X, element.Rows[p]) - reference;
            }

            for (var p = 0; p < ports; p++)
            {
                var foretold = currents[start + p];
                for (var q = 0; q < ports; q++)
                {
                    foretold += slopes[slopeStart[e] + (p * ports) + q] * (portNew[start + q] - before[q]);
                }

                predicted[start + p] = foretold;
                portVolts[start + p] = portNew[start + p];
            }

            element.Law.Limit(before, portVolts.AsSpan(start, ports), Slots.AsSpan(element.Slot, element.Law.Constants));
        }
    }

    /// <summary>After <see cref="Advance"/> and <see cref="Evaluate"/>: which lanes' tangents foretold what the laws now say (bit per lane).</summary>
    public uint Agreeing()
    {
        var bad = Lanes.Zero;
        for (var i = 0; i < currents.Length; i++)
        {
            var currentError = Vector256.Abs(currents[i] - predicted[i]);
            var currentLimit =
                Lanes.All(CurrentTolerance) + (RelativeTolerance * (Vector256.Abs(currents[i]) + Vector256.Abs(predicted[i])));
            var voltError = Vector256.Abs(portVolts[i] - portNew[i]);
            var voltLimit = Lanes.All(1e-8) + (1e-8 * Vector256.Abs(portNew[i]));

            // "Not less" also catches NaN.
            bad |= ~Vector256.LessThanOrEqual(Vector256.Abs(currents[i]), Lanes.All(Absurd));
            bad |= ~Vector256.LessThanOrEqual(currentError, currentLimit) | ~Vector256.LessThanOrEqual(voltError, voltLimit);
        }

        return ~bad.ExtractMostSignificantBits() & 0xF;
    }

    /// <summary>Lanes whose solution holds a NaN or infinity (bit per lane).</summary>
    public uint Broken()
    {
        var sum = Lanes.Zero;
        foreach (var x in X)
        {
            sum += x * Lanes.Zero;
        }

        return ~Vector256.Equals(sum, Lanes.Zero).ExtractMostSignificantBits() & 0xF;
    }

    /// <summary>Element currents at the last evaluation, by element and port.</summary>
    public ReadOnlySpan<Lane> CurrentsOf(int element) => currents.AsSpan(portStart[element], elements[element].Law.Ports);

    /// <summary>Element slopes at the last evaluation.</summary>
    public ReadOnlySpan<Lane> SlopesOf(int element)
    {
        var ports = elements[element].Law.Ports;
        return slopes.AsSpan(slopeStart[element], ports * ports);
    }
}
