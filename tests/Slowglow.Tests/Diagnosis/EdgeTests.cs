using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Diagnosis.Answers;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Diagnosis.Source;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.House;
using Xunit;

namespace Slowglow.Tests.Diagnosis;

/// <summary>An output stage with one half dead stands on an edge: which side of it a unit is on, its offset decides.</summary>
public sealed class EdgeTests
{
    /// <summary>Read on a solved unit whose Q10 has its emitter open, offset the other way than the nominal one: its output hangs on the rail.</summary>
    [Theory]
    [InlineData(34.15, 34.18, true)]
    [InlineData(1.43, 0.1, false)]
    public void A_half_dead_output_stage_may_hang_on_the_rail(double hi, double bt, bool astray)
    {
        var knowledge = Knowledge.Of(
            new WorldSource(DemoUnits.Of("heronsgate-m60").Worlds),
            null,
            TestContext.Current.CancellationToken
        );
        var h = Enumerable
            .Range(0, knowledge.Hypotheses.WithoutPairs)
            .First(i => knowledge.Hypotheses[i].Faults is [{ Part: "Q10", Where: "e", Mode: FailureMode.Open }]);
        var block = knowledge.BlockOf(Setup.Default);
        block.Ensure([0, h], null, TestContext.Current.CancellationToken);
        var readings = new[] { ("HI", hi), ("BT", bt) }
            .Select(r => new Reading(
                new(r.Item1, r.Item1, NetTable.Ground, ProbeKind.Dc),
                Setup.Default,
                MeterSaid.Value,
                r.Item2,
                MeterClass.Handheld,
                "",
                Place.None
            ))
            .ToArray();
        var set = new ReadingSet(
            readings,
            [.. readings.Select(r => knowledge.Answers.ColumnOf(r.Setup, r.Probe, r.Meter))],
            knowledge.Answers.Reach
        );
        var fit = new Fit(set, h);

        Assert.Equal(astray, fit.IsAstray);
        Assert.True(fit.LogLikelihood > set.LogNone() - 2, $"{fit.LogLikelihood} beside {set.LogNone()}");
        Assert.Equal(astray ? AnswerKind.Unsettled : AnswerKind.Value, fit.Predict(block, 0).Kind);
    }

    [Theory]
    [InlineData("b", "e", 0.62, 0.3, true)]
    [InlineData("e", "b", -0.62, 0.3, true)]
    [InlineData("b", "e", 0.62, 0.03, false)]
    [InlineData("b", "e", -3, 0.3, false)]
    [InlineData("c", "e", 0.62, 0.3, false)]
    public void Only_a_junction_that_conducts_and_moves_too_far_is_on_an_edge(
        string red,
        string black,
        double volts,
        double sigma,
        bool onEdge
    )
    {
        var sheet = DemoUnits.Of("heronsgate-m60").Sheet;
        var part = sheet.Parts.First(p => p.Designator == "Q12");
        var probe = new Probe("Q12", part.NetOf(red)!, part.NetOf(black)!, ProbeKind.Dc);

        Assert.Equal(onEdge, new WorldEdge(sheet, [probe]).IsOnEdge([new Answer(AnswerKind.Value, volts, [sigma])]));
    }

    /// <summary>Without its feedback an op-amp lies against one supply or the other, as its own offset has it; with some volts at its inputs there is no doubt.</summary>
    [Theory]
    [InlineData("R20", FailureMode.Open, true)]
    [InlineData("", FailureMode.Open, false)]
    public void An_op_amp_that_lost_its_feedback_is_on_an_edge(string part, FailureMode mode, bool onEdge)
    {
        var unit = BenchUnit.From(File.ReadAllText(Path.Combine(Repository.Root, "demo", "sheets", "bittern-ps2.yaml"))).Value!;
        Fault[] faults = part.Length == 0 ? [] : [new(part, "", mode)];
        Probe[] probes =
        [
            .. unit.Sheet.Nets.Names.Where(n => n != NetTable.Ground).Select(n => new Probe(n, n, NetTable.Ground, ProbeKind.Dc)),
        ];
        var answers = unit.Worlds.Ask(
            Setup.Default,
            [faults],
            probes,
            MeterClass.Handheld,
            null,
            TestContext.Current.CancellationToken
        )[0];

        Assert.Equal(onEdge, new WorldEdge(unit.Sheet, probes).IsOnEdge(answers));
    }
}
