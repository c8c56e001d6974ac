using Slowglow.Quantities;
using Slowglow.Sheets;

namespace Slowglow.Bench.Sums;

/// <summary>Resistors side by side; and which one to put beside another to come to a value.</summary>
public sealed class ParallelSum : BenchSum
{
    public override string Key => "parallel";
    public override string Title => "Resistors in parallel";

    public override IReadOnlyList<SumField> Fields =>
        [
            new("ohms", "Resistors", Unit.None, "100k 47k"),
            new("wanted", "Value wanted, if another is to be added", Unit.Ohm, "") { MayBeEmpty = true },
        ];

    protected override Parsed<SumAnswer> Answer(SumFigures given, CancellationToken cancel)
    {
        var words = given.Word("ohms").Split([' ', ';', '+', '|'], StringSplitOptions.RemoveEmptyEntries);
        List<double> ohms = [];
        foreach (var word in words)
        {
            if (!QuantityText.TryRead(word, Unit.Ohm, out var read) || !(read.Value > 0))
            {
                return Wrong($"\"{word}\" is no resistor.", "Type them with blanks between: 100k 47k 4k7.");
            }

            ohms.Add(read.Value);
        }

        if (ohms.Count == 0)
        {
            return Wrong("There is no resistor.", "Type them with blanks between: 100k 47k 4k7.");
        }

        var together = 1 / ohms.Sum(r => 1 / r);
        List<SumLine> lines = [Line("side by side", together, "ohm", 4), Line("in a row", ohms.Sum(), "ohm", 4)];
        List<string> working = [$"1 / ({string.Join(" + ", ohms.Select(r => "1/" + Engineering.Drawing(r)))})."];
        var wanted = given["wanted"];
        if (wanted >= together)
        {
            return Wrong(
                $"They already come to {Say(together, "ohm")}; one more beside them only lowers that.",
                "Ask for less, or put one in series."
            );
        }

        if (double.IsFinite(wanted))
        {
            var beside = 1 / ((1 / wanted) - (1 / together));
            var stock = PreferredSeries.NearestE24(beside);
            lines.Add(Line($"for {Say(wanted, "ohm")} add beside them", beside, "ohm", 4));
            lines.Add(new("nearest of E24", Engineering.Drawing(stock)));
            lines.Add(Line("which comes to", 1 / ((1 / together) + (1 / stock)), "ohm", 4));
            working.Add("R = 1 / (1/wanted - 1/together).");
        }

        return Right(new SumAnswer(lines, working));
    }
}
