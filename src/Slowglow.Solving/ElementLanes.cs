using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// The elements of four worlds, each linearised where its ports last were. An element whose ports have hardly moved since keeps its
/// tangents: evaluating the laws is most of the work. What a lane does never depends on the lanes beside it.
/// </summary>
internal sealed class ElementLanes
{
    private const int MostPorts = 8;
    private const double CurrentTolerance = 1e-10;

    /// <summary>No part carries so many amperes: where tangents this steep agree, it is for want of digits.</summary>
    private const double Absurd = 1e6;
    private const double RelativeTolerance = 1e-6;
    private static readonly Lane All = Vector256<double>.AllBitsSet;

    private readonly Equations equations;
    private readonly Element[] elements;
    private readonly int[][] positions;
    private readonly int[] portStart;
    private readonly int[] slopeStart;
    private readonly Lane[] portVolts;
    private readonly Lane[] portNew;
    private readonly Lane[] currents;
    private readonly Lane[] slopes;
    private readonly Lane[] predicted;

    /// <summary>For each element the lanes whose ports moved and whose tangents are to be made anew.</summary>
    private readonly Lane[] moved;

    public ElementLanes(Equations equations)
    {
        this.equations = equations;
        elements = [.. equations.Elements];
        positions = [.. elements.Select(e => equations.Pattern.PositionsOf(e.Rows))];
        portStart = Starts(elements.Select(e => e.Law.Ports));
        slopeStart = Starts(elements.Select(e => e.Law.Ports * e.Law.Ports));
        portVolts = new Lane[portStart[^1]];
        portNew = new Lane[portStart[^1]];
        currents = new Lane[portStart[^1]];
        predicted = new Lane[portStart[^1]];
        slopes = new Lane[slopeStart[^1]];
        moved = new Lane[elements.Length];
    }

    private static int[] Starts(IEnumerable<int> lengths)
    {
        List<int> starts = [0];
        starts.AddRange(lengths.Select(l => starts[^1] + l));
        return [.. starts];
    }

    /// <summary>Port volts, currents and slopes of one lane, end to end, as <see cref="Put"/> takes them.</summary>
    public (double[] Volts, double[] Currents, double[] Slopes) Take(int lane) =>
        (Of(portVolts, lane), Of(currents, lane), Of(slopes, lane));

    /// <summary>The same, into arrays that are there already.</summary>
    public void Take(int lane, (double[] Volts, double[] Currents, double[] Slopes) into)
    {
        Copy(portVolts, lane, into.Volts);
        Copy(currents, lane, into.Currents);
        Copy(slopes, lane, into.Slopes);
    }

    private static double[] Of(Lane[] lanes, int lane)
    {
        var taken = new double[lanes.Length];
        Copy(lanes, lane, taken);
        return taken;
    }

    private static void Copy(Lane[] lanes, int lane, double[] into)
    {
        for (var i = 0; i < into.Length; i++)
        {
            into[i] = Lanes.Get(in lanes[i], lane);
        }
    }

    /// <summary>Puts a world with known tangents into every lane.</summary>
    public void PutEverywhere(double[] volts, double[] amps, double[] siemens)
    {
        for (var i = 0; i < volts.Length; i++)
        {
            (portVolts[i], currents[i]) = (Lanes.All(volts[i]), Lanes.All(amps[i]));
        }

        for (var i = 0; i < siemens.Length; i++)
        {
            slopes[i] = Lanes.All(siemens[i]);
        }
    }

    /// <summary>Puts a world with known tangents into a lane.</summary>
    public void Put(int lane, double[] volts, double[] amps, double[] siemens)
    {
        for (var i = 0; i < volts.Length; i++)
        {
            Lanes.Put(ref portVolts[i], lane, volts[i]);
            Lanes.Put(ref currents[i], lane, amps[i]);
        }

        for (var i = 0; i < siemens.Length; i++)
        {
            Lanes.Put(ref slopes[i], lane, siemens[i]);
        }
    }

    /// <summary>Takes the port voltages of all lanes from <paramref name="x"/> as the point to linearise at.</summary>
    public void Linearise(ReadOnlySpan<Lane> x)
    {
        PortsAt(x);
        portNew.CopyTo(portVolts, 0);
        for (var e = 0; e < moved.Length; e++)
        {
            moved[e] = All;
        }
    }

    /// <summary>The same for one lane; the others keep what they have.</summary>
    public void Linearise(ReadOnlySpan<Lane> x, int lane)
    {
        PortsAt(x);
        for (var i = 0; i < portNew.Length; i++)
        {
            Lanes.Put(ref portVolts[i], lane, Lanes.Get(in portNew[i], lane));
        }

        var mask = Lanes.Mask(1u << lane);
        for (var e = 0; e < moved.Length; e++)
        {
            moved[e] |= mask;
        }
    }

    /// <summary>
    /// As <see cref="Linearise(ReadOnlySpan{Lane})"/>, but elements whose tangents still hold keep them. The slots must be those of the last
    /// evaluation in every lane but those in <paramref name="anew"/>.
    /// </summary>
    public void LineariseNear(ReadOnlySpan<Lane> x, ReadOnlySpan<Lane> slots, in Lane anew)
    {
        PortsAt(x);
        for (var e = 0; e < elements.Length; e++)
        {
            var (start, ports) = (portStart[e], elements[e].Law.Ports);
            var mask =
                anew | elements[e].Law.Moved(portVolts.AsSpan(start, ports), portNew.AsSpan(start, ports), ConstantsOf(e, slots));
            moved[e] = mask;
            for (var p = start; p < start + ports; p++)
            {
                portVolts[p] = Lanes.Choose(mask, portNew[p], portVolts[p]);
            }
        }
    }

    /// <summary>Nothing has moved.</summary>
    public void Still() => Array.Clear(moved);

    /// <summary>A constant of an element has changed in one lane.</summary>
    public void Touch(int element, int lane) => moved[element] |= Lanes.Mask(1u << lane);

    private void PortsAt(ReadOnlySpan<Lane> x)
    {
        for (var e = 0; e < elements.Length; e++)
        {
            var rows = elements[e].Rows;
            var reference = At(x, rows[^1]);
            for (var p = 0; p < rows.Length - 1; p++)
            {
                portNew[portStart[e] + p] = At(x, rows[p]) - reference;
            }
        }
    }

    private static Lane At(ReadOnlySpan<Lane> x, int row) => row < 0 ? Lanes.Zero : x[row];

    private ReadOnlySpan<Lane> ConstantsOf(int e, ReadOnlySpan<Lane> slots) =>
        slots.Slice(elements[e].Slot, elements[e].Law.Constants);

    /// <summary>Evaluates where ports moved.</summary>
    public void Evaluate(ReadOnlySpan<Lane> slots)
    {
        Span<Lane> room = stackalloc Lane[MostPorts + (MostPorts * MostPorts)];
        for (var e = 0; e < elements.Length; e++)
        {
            var mask = moved[e];
            var which = mask.ExtractMostSignificantBits();
            if (which == 0)
            {
                continue;
            }

            var ports = elements[e].Law.Ports;
            var volts = portVolts.AsSpan(portStart[e], ports);
            var amps = currents.AsSpan(portStart[e], ports);
            var siemens = slopes.AsSpan(slopeStart[e], ports * ports);
            if (which == 0xF)
            {
                elements[e].Law.Evaluate(volts, ConstantsOf(e, slots), amps, siemens);
                continue;
            }

            var newAmps = room[..ports];
            var newSiemens = room.Slice(MostPorts, ports * ports);
            elements[e].Law.Evaluate(volts, ConstantsOf(e, slots), newAmps, newSiemens);
            Blend(mask, newAmps, amps);
            Blend(mask, newSiemens, siemens);
        }
    }

    private static void Blend(Lane mask, ReadOnlySpan<Lane> now, Span<Lane> kept)
    {
        for (var i = 0; i < kept.Length; i++)
        {
            kept[i] = Lanes.Choose(mask, now[i], kept[i]);
        }
    }

    /// <summary>Change of an element's currents when one constant changes by a small amount, over that amount times <paramref name="amount"/>.</summary>
    public void ConstantEffect(int element, int constant, in Lane amount, ReadOnlySpan<Lane> slots, Span<Lane> effect)
    {
        // Small enough that an amplifier of a million stays on its tangent, the ten microamperes of its cross-over included.
        const double Fraction = 1e-11;
        var law = elements[element].Law;
        var ports = law.Ports;
        Span<Lane> constants = stackalloc Lane[law.Constants];
        Span<Lane> unused = stackalloc Lane[ports * ports];
        var volts = portVolts.AsSpan(portStart[element], ports);
        ConstantsOf(element, slots).CopyTo(constants);
        constants[constant] += Fraction * amount;
        law.Evaluate(volts, constants, effect[..ports], unused);
        for (var p = 0; p < ports; p++)
        {
            effect[p] = (effect[p] - currents[portStart[element] + p]) * Lanes.All(1 / Fraction);
        }
    }

    /// <summary>Adds the tangents of all elements, times a share, to the matrix and their remainders to the right side.</summary>
    public void Stamp(Lane[] matrix, Span<Lane> rightSide, double share = 1)
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
        var at = positions[e];
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
                matrix[at[(p * n) + q]] += g;
                matrix[at[((n - 1) * n) + q]] -= g;
            }

            matrix[at[(p * n) + n - 1]] -= sum;
            matrix[at[((n - 1) * n) + n - 1]] += sum;
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

    /// <summary>
    /// Moves the points of linearisation to the solution <paramref name="x"/> as far as the laws allow, remembering what the tangents
    /// foretold. An element still on its tangent stays where it is.
    /// </summary>
    public void Advance(ReadOnlySpan<Lane> x, ReadOnlySpan<Lane> slots)
    {
        PortsAt(x);
        Span<Lane> room = stackalloc Lane[MostPorts];
        for (var e = 0; e < elements.Length; e++)
        {
            var law = elements[e].Law;
            var (start, ports) = (portStart[e], law.Ports);
            var volts = portVolts.AsSpan(start, ports);
            var wanted = portNew.AsSpan(start, ports);
            var constants = ConstantsOf(e, slots);
            var mask = moved[e] = law.Moved(volts, wanted, constants);
            if (mask.ExtractMostSignificantBits() == 0)
            {
                continue;
            }

            Foretell(e, volts, wanted);
            var next = room[..ports];
            wanted.CopyTo(next);
            law.Limit(volts, next, constants);
            Blend(mask, next, volts);
        }
    }

    private void Foretell(int e, ReadOnlySpan<Lane> volts, ReadOnlySpan<Lane> wanted)
    {
        var ports = volts.Length;
        for (var p = 0; p < ports; p++)
        {
            var foretold = currents[portStart[e] + p];
            for (var q = 0; q < ports; q++)
            {
                foretold += slopes[slopeStart[e] + (p * ports) + q] * (wanted[q] - volts[q]);
            }

            predicted[portStart[e] + p] = foretold;
        }
    }

    /// <summary>Lanes in which some element would leave its tangent at <paramref name="x"/> (bit per lane). Changes nothing.</summary>
    public uint Leaving(ReadOnlySpan<Lane> x, ReadOnlySpan<Lane> slots)
    {
        PortsAt(x);
        var any = Lanes.Zero;
        for (var e = 0; e < elements.Length; e++)
        {
            var (start, ports) = (portStart[e], elements[e].Law.Ports);
            any |= elements[e].Law.Moved(portVolts.AsSpan(start, ports), portNew.AsSpan(start, ports), ConstantsOf(e, slots));
        }

        return any.ExtractMostSignificantBits();
    }

    /// <summary>After <see cref="Advance"/> and <see cref="Evaluate"/>: which lanes' tangents foretold what the laws now say (bit per lane).</summary>
    public uint Agreeing()
    {
        var bad = Lanes.Zero;
        for (var e = 0; e < elements.Length; e++)
        {
            var wrong = Lanes.Zero;
            for (var i = portStart[e]; i < portStart[e + 1]; i++)
            {
                var amps = Vector256.Abs(currents[i]);
                var error = Vector256.Abs(currents[i] - predicted[i]);
                var limit = Lanes.All(CurrentTolerance) + (RelativeTolerance * (amps + Vector256.Abs(predicted[i])));
                var shortBy = Vector256.Abs(portVolts[i] - portNew[i]);
                var reach = Lanes.All(1e-8) + (1e-8 * Vector256.Abs(portNew[i]));

                // "Not less" also catches NaN.
                wrong |= ~Vector256.LessThanOrEqual(error, limit) | ~Vector256.LessThanOrEqual(shortBy, reach);
                bad |= ~Vector256.LessThanOrEqual(amps, Lanes.All(Absurd));
            }

            bad |= wrong & moved[e];
        }

        return ~bad.ExtractMostSignificantBits() & 0xF;
    }

    /// <summary>Currents at the last evaluation, by port.</summary>
    public ReadOnlySpan<Lane> CurrentsOf(int element) => currents.AsSpan(portStart[element], elements[element].Law.Ports);

    /// <summary>Slopes at the last evaluation.</summary>
    public ReadOnlySpan<Lane> SlopesOf(int element)
    {
        var ports = elements[element].Law.Ports;
        return slopes.AsSpan(slopeStart[element], ports * ports);
    }
}
