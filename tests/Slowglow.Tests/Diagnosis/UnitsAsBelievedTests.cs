using Slowglow.Bench.Questions;
using Slowglow.Bench.Rehearsals;
using Slowglow.Circuits;
using Slowglow.Diagnosis.Answers;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Diagnosis.Source;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.House;

namespace Slowglow.Tests.Diagnosis;

/// <summary>
/// Whether units with other laws and parts of their own read what the program believes of them, within the widths it believes: every reading on offer,
/// healthy and with every so-manieth fault. A width too narrow convicts the innocent.
/// </summary>
public sealed class UnitsAsBelievedTests
{
    private const int Units = 3;
    private const int Faults = 40;

    /// <summary>Standard deviations beyond which a reading is far off.</summary>
    private const double Far = 4;

    [Theory]
    [InlineData("demo/heronsgate-m60/sheet.yaml", 0.01)]
    [InlineData("demo/kittiwake-15/sheet.yaml", 0.01)]
    [InlineData("demo/saltmarsh-lm2/sheet.yaml", 0.02)]
    [InlineData("demo/sheets/bittern-ps2.yaml", 0.02)]
    [InlineData("demo/sheets/curlew-r2.yaml", 0.01)]
    [InlineData("demo/sheets/dunlin-pm1.yaml", 0.01)]
    [InlineData("demo/sheets/linnet-12.yaml", 0.01)]
    [InlineData("demo/sheets/merganser-vx2.yaml", 0.01)]
    [InlineData("demo/sheets/ptarmigan-50.yaml", 0.01)]
    [InlineData("demo/sheets/siskin-5r.yaml", 0.01)]
    [InlineData("demo/sheets/wheatear-p40.yaml", 0.04)]
    public void Few_readings_of_real_units_are_far_from_what_is_believed(string file, double most)
    {
        var unit = BenchUnit.From(File.ReadAllText(Path.Combine(Repository.Root, file))).Value!;
        var knowledge = Knowledge.Of(new WorldSource(unit.Worlds), null, TestContext.Current.CancellationToken);
        var list = knowledge.Hypotheses;
        var every = Math.Max(1, list.WithoutPairs / Faults);
        int[] asked = [.. Enumerable.Range(0, list.WithoutPairs).Where(h => h % every == 0)];
        var random = new Random(77);
        Worlds[] units =
        [
            .. Enumerable.Range(0, Units).Select(_ => new SpecimenMaker(unit.Sheet, random).Make(null)!.Value.Sold.Worlds),
        ];
        foreach (var setup in new[] { Setup.Default, Setup.Cold })
        {
            var block = knowledge.BlockOf(setup);
            block.Ensure(asked, null, TestContext.Current.CancellationToken);
            var off = units.Select(u => Off(u, setup, block, asked, list)).ToArray();
            var all = off.SelectMany(u => u).SelectMany(z => z).Where(z => !double.IsNaN(z)).ToArray();
            Assert.InRange(all.Count(z => z > Far) / (double)all.Length, 0, most);
            for (var p = 0; p < block.Probes.Count; p++)
            {
                Assert.False(
                    off.All(u => u[0][p] > Far),
                    $"{setup.Name}: {block.Probes[p].Where} {block.Probes[p].Kind} of all healthy units is far from what is believed"
                );
            }
        }
    }

    /// <summary>By hypothesis and probe: standard deviations off; NaN where there is no figure on both sides, or the world is known to stand on an edge.</summary>
    private static double[][] Off(Worlds unit, Setup setup, AnswerBlock block, int[] asked, HypothesisList list)
    {
        var answers = unit.Ask(
            setup,
            [.. asked.Select(list.FaultsOf)],
            block.Probes,
            MeterClass.Handheld,
            null,
            TestContext.Current.CancellationToken
        );
        return [.. asked.Select((h, i) => block.Probes.Select((probe, p) => Off(block, h, p, probe, answers[i][p])).ToArray())];
    }

    private static double Off(AnswerBlock block, int hypothesis, int p, Probe probe, Answer answer)
    {
        var believed = block.Alone(hypothesis, p);
        return block.IsOnEdge(hypothesis) || !believed.HasFigure || !answer.HasValue
            ? double.NaN
            : Math.Abs(Scale.Of(probe).To(answer.Value) - believed.Mean) / believed.Sd;
    }
}
