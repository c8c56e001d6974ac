using System.Numerics;
using Slowglow.Circuits.Building;
using Slowglow.Circuits.Models.OpAmp;
using Slowglow.Sheets.Parts.OpAmp;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>
/// Noise at the output by the adjoint: one solve at each frequency tells what a noise current anywhere does there. A passive branch has the
/// thermal noise of the real part of its admittance (Nyquist), whatever it is made of.
/// </summary>
internal sealed class NoiseQuestion
{
    private const int PerDecade = 10;
    private readonly AskedWorld asked;
    private readonly Fixtures.PathFixture path;
    private readonly SignalSweep sweep;
    private readonly ElementAtRest[] elements;
    private readonly double[] thermal;
    private readonly double[] shot;
    private readonly double[] opAmp;

    public NoiseQuestion(AskedWorld asked, Fixtures.PathFixture path)
    {
        (this.asked, this.path) = (asked, path);
        var equations = asked.Circuit.Equations;
        sweep = new SignalSweep(asked, path);
        elements = [.. equations.Elements.Select(e => new ElementAtRest(e, asked.State.Slots, asked.State.Mean))];
        thermal = new double[equations.Branches.Count];
        shot = new double[elements.Length];
        opAmp = new double[elements.Length];
    }

    public NoiseFloor Ask(double from, double to)
    {
        var hertz = ResponseQuestion.Decades(from, to, PerDecade);
        for (var k = 0; k < hertz.Length && path.Out >= 0; k++)
        {
            // Trapezoids over frequency.
            var below = k == 0 ? hertz[k] : hertz[k - 1];
            var above = k == hertz.Length - 1 ? hertz[k] : hertz[k + 1];
            AddBand(hertz[k], (above - below) / 2);
        }

        var sources = Sources();
        var volts = Math.Sqrt(sources.Sum(s => s.OutputVolts * s.OutputVolts));
        return new(from, to, volts, 20 * Math.Log10(Level() / volts), sources);
    }

    private double Level() =>
        path.Out < 0 ? double.NaN : path.Path.LevelVolts * sweep.At(SignalFollower.Hertz).Driven()[path.Out].Magnitude;

    private void AddBand(double hertz, double width)
    {
        var adjoint = sweep.At(hertz).Signal.Adjoint(path.Out, -1);
        var branches = asked.Circuit.Equations.Branches;
        for (var b = 0; b < branches.Count; b++)
        {
            thermal[b] += width * NoiseCurrents.FourKT * RealAdmittance(branches[b], hertz) * Square(Along(branches[b], adjoint));
        }

        for (var e = 0; e < elements.Length; e++)
        {
            AddElement(e, adjoint, hertz, width);
        }
    }

    private void AddElement(int e, Complex[] adjoint, double hertz, double width)
    {
        var at = elements[e];
        foreach (var (port, density) in NoiseCurrents.Of(at))
        {
            shot[e] += width * density * Square(Against(at, adjoint, port));
        }

        if (at.Element.Law is OpAmpLaw)
        {
            // Volts between the inputs act through all currents that the inputs control, and as fast as the op-amp is.
            Complex reach = 0;
            for (var p = 0; p < at.Volts.Length; p++)
            {
                reach += Against(at, adjoint, p) * at.Slope(p, 0);
            }

            var pole = new Complex(1, hertz / at.Constant((int)OpAmpLaw.Constant.PoleHertz));
            var rise = 1 + ((Stated(e, "corner") ?? 0) / hertz);
            opAmp[e] += width * rise * NoiseCurrents.OpAmpInput(at, Stated(e, "en")) * Square(reach / pole);
        }
    }

    private double? Stated(int e, string constant)
    {
        var part = asked.Circuit.Sheet.Parts.FirstOrDefault(p => p.Designator == asked.Parts.OfElement(e)) as OpAmpPart;
        return part?.Device.Law.TryGetValue(constant, out var value) == true ? value : null;
    }

    private List<NoiseSource> Sources()
    {
        var all = thermal
            .Select((v, b) => (Part: NameOf(b), Kind: NoiseKind.Thermal, Square: v))
            .Concat(shot.Select((v, e) => (Part: asked.Parts.OfElement(e), Kind: NoiseKind.Shot, Square: v)))
            .Concat(opAmp.Select((v, e) => (Part: asked.Parts.OfElement(e), Kind: NoiseKind.OpAmp, Square: v)));
        return
        [
            .. all.Where(s => s.Square > 0 && s.Part.Length > 0)
                .GroupBy(s => (s.Part, s.Kind))
                .Select(g => new NoiseSource(g.Key.Part, g.Key.Kind, Math.Sqrt(g.Sum(s => s.Square))))
                .OrderByDescending(s => s.OutputVolts),
        ];
    }

    private string NameOf(int branch) =>
        branch == path.SourceBranch ? "generator"
        : asked.Circuit.Equations.Branches[branch].Slot == path.LoadSlot ? "load"
        : asked.Parts.OfBranch(branch);

    private double RealAdmittance(Branch branch, double hertz) =>
        branch.Kind switch
        {
            BranchKind.Conductance => sweep.Slots[branch.Slot],
            BranchKind.Storage => 0,
            _ => (1 / new Complex(sweep.Slots[branch.Slot], 2 * Math.PI * hertz * sweep.Slots[branch.SteadySlot])).Real,
        };

    private static Complex Along(Branch branch, Complex[] adjoint)
    {
        Complex sum = 0;
        for (var k = 0; k < branch.Rows.Length; k++)
        {
            sum += branch.Weights[k] * adjoint[branch.Rows[k]];
        }

        return sum;
    }

    private static Complex Against(ElementAtRest e, Complex[] adjoint, int port) =>
        At(adjoint, e.Element.Rows[port]) - At(adjoint, e.Element.Rows[^1]);

    private static Complex At(Complex[] v, int row) => row < 0 ? 0 : v[row];

    private static double Square(Complex c) => (c.Real * c.Real) + (c.Imaginary * c.Imaginary);
}
