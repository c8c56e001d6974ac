using System.Globalization;
using Slowglow.Quantities;
using Slowglow.Sheets;

namespace Slowglow.Bench.Sums;

/// <summary>Figures printed on small parts to a value, and a value to its figures.</summary>
public sealed class PartCodeSum : BenchSum
{
    public override string Key => "codes";
    public override string Title => "Figures on a part";

    public override IReadOnlyList<SumField> Fields =>
        [
            new("code", "Code, or a value", Unit.None, "104K"),
            new("of", "On a", Unit.None, "capacitor") { Choices = ["capacitor", "resistor"] },
        ];

    protected override Parsed<SumAnswer> Answer(SumFigures given, CancellationToken cancel)
    {
        var capacitor = given.Word("of") != "resistor";
        var (one, unit) = capacitor ? (1e-12, "F") : (1.0, "ohm");
        var text = given.Word("code");
        if (PartCode.Read(text) is { } read)
        {
            List<SumLine> lines = [Line("value", read.Value * one, unit, 4)];
            if (!double.IsNaN(read.Tolerance))
            {
                lines.Add(new("tolerance", (100 * read.Tolerance).ToString("0.###", CultureInfo.InvariantCulture) + " %"));
            }

            return Right(
                new SumAnswer(
                    lines,
                    [
                        capacitor
                            ? "The last figure counts the noughts, in picofarads."
                            : "The last figure counts the noughts, in ohms.",
                    ]
                )
            );
        }

        if (!QuantityText.TryRead(text, capacitor ? Unit.Farad : Unit.Ohm, out var value) || !(value.Value > 0))
        {
            return Wrong(
                $"\"{text}\" is neither a code nor a value.",
                capacitor ? "Type it as 104K or 100n." : "Type it as 473 or 47k."
            );
        }

        return PartCode.Write(value.Value / one) is { } code
            ? Right(new SumAnswer([new("printed as", code)], ["Two figures and how many noughts follow."]))
            : Wrong("Three figures do not say that value.", "Two digits and noughts only, from 1 pF or 1 ohm up.");
    }
}
