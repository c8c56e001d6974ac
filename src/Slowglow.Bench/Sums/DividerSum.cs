using Slowglow.Quantities;
using Slowglow.Sheets;

namespace Slowglow.Bench.Sums;

/// <summary>Two resistors in series across a voltage, with what hangs on their middle.</summary>
public sealed class DividerSum : BenchSum
{
    public override string Key => "divider";
    public override string Title => "Divider";

    public override IReadOnlyList<SumField> Fields =>
        [
            new("volts", "Volts across both", Unit.Volt, "300 V"),
            new("upper", "Upper resistor", Unit.Ohm, "220k"),
            new("lower", "Lower resistor", Unit.Ohm, "100k"),
            new("load", "Load on the middle, if any", Unit.Ohm, "") { MayBeEmpty = true },
        ];

    protected override Parsed<SumAnswer> Answer(SumFigures given, CancellationToken cancel)
    {
        var (upper, lower, load) = (given["upper"], given["lower"], given["load"]);
        var under = double.IsNaN(load) ? lower : lower * load / (lower + load);
        var amps = given["volts"] / (upper + under);
        var middle = amps * under;
        List<string> working = [];
        if (!double.IsNaN(load))
        {
            working.Add($"Below: {Drawn(lower)} beside {Drawn(load)} = {Say(under, "ohm")}.");
        }

        working.Add($"{Say(given["volts"], "V")} x {Drawn(under)} / ({Drawn(upper)} + {Drawn(under)}) = {Say(middle, "V")}.");
        return Right(
            new SumAnswer(
                [
                    Line("middle", middle, "V"),
                    Line("times", middle / given["volts"], "times"),
                    Line("down by", -20 * Math.Log10(middle / given["volts"]), "dB"),
                    Line("current", amps, "A"),
                    Line("heat in the upper", amps * amps * upper, "W"),
                    Line("heat in the lower", middle * middle / lower, "W"),
                    Line("the middle looks like", upper * lower / (upper + lower), "ohm"),
                ],
                working
            )
        );
    }

    private static string Drawn(double ohms) => Engineering.Drawing(ohms);
}
