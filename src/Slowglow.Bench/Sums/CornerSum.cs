using Slowglow.Quantities;
using Slowglow.Sheets;

namespace Slowglow.Bench.Sums;

/// <summary>Where a resistor and a capacitor, or a coil, part the high from the low.</summary>
public sealed class CornerSum : BenchSum
{
    public override string Key => "corner";
    public override string Title => "Corner frequency";

    public override IReadOnlyList<SumField> Fields =>
        [
            new("ohms", "Resistance", Unit.Ohm, "1M") { MayBeEmpty = true },
            new("farads", "Capacitance", Unit.Farad, "22n") { MayBeEmpty = true },
            new("henries", "Inductance, if any", Unit.Henry, "") { MayBeEmpty = true },
        ];

    protected override Parsed<SumAnswer> Answer(SumFigures given, CancellationToken cancel)
    {
        var (r, c, l) = (given["ohms"], given["farads"], given["henries"]);
        if (new[] { r, c, l }.Count(double.IsFinite) < 2)
        {
            return Wrong("A corner needs two of the three.", "Give a resistance and a capacitance, such as 1M and 22n.");
        }

        List<SumLine> lines = [];
        List<string> working = [];
        if (double.IsFinite(r) && double.IsFinite(c))
        {
            lines.Add(Line("3 dB down, with the capacitor", 1 / (2 * Math.PI * r * c), "Hz"));
            lines.Add(Line("time constant R C", r * c, "s"));
            working.Add("f = 1 / (2 pi R C).");
        }

        if (double.IsFinite(r) && double.IsFinite(l))
        {
            lines.Add(Line("3 dB down, with the coil", r / (2 * Math.PI * l), "Hz"));
            lines.Add(Line("time constant L / R", l / r, "s"));
            working.Add("f = R / (2 pi L).");
        }

        if (double.IsFinite(c) && double.IsFinite(l))
        {
            lines.Add(Line("resonance", 1 / (2 * Math.PI * Math.Sqrt(l * c)), "Hz"));
            lines.Add(Line("both are then", Math.Sqrt(l / c), "ohm"));
            working.Add("f = 1 / (2 pi root(L C)); the impedance is root(L / C).");
        }

        return Right(new SumAnswer(lines, working));
    }
}
