using Slowglow.Circuits;
using Slowglow.Diagnosis;
using Slowglow.Diagnosis.Advice;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Diagnosis.Next;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.ReferenceSolver;
using Xunit;

namespace Slowglow.Tests.Diagnosis;

public sealed class NextReadingTests
{
    private static readonly Probe Volts = new("A", "A", NetTable.Ground, ProbeKind.Dc);
    private static readonly Prediction Low = new(AnswerKind.Value, 10, 0.1);
    private static readonly Prediction High = new(AnswerKind.Value, 20, 0.1);

    [Fact]
    public void Two_readings_that_tell_nothing_alone_tell_all_together()
    {
        // Cure 0 where both readings agree, cure 1 where they differ.
        Active[] four = [new(1, 0, 0.25), new(2, 0, 0.25), new(3, 1, 0.25), new(4, 1, 0.25)];
        var broad = new Broad(Volts, new(AnswerKind.Value, 50, 1), 100);
        var first = OutcomeTable.Of([Low, High, Low, High], four, broad, Volts);
        var second = OutcomeTable.Of([Low, High, High, Low], four, broad, Volts);
        var alone = Predictive.Of([Low, High, Low, High], four, 3, broad, 0, Volts, Predictive.MostEdges).Bits();

        var (bits, minutes) = new Lookahead(four, 3, 0).After(first, [new(second, 2)]);

        Assert.Equal(0, alone, 3);
        Assert.InRange(bits, 0.9, 1.01);
        Assert.Equal(2, minutes, 1);
    }

    [Fact]
    public void A_second_reading_that_repeats_the_first_adds_nothing()
    {
        Active[] two = [new(1, 0, 0.5), new(2, 1, 0.5)];
        var broad = new Broad(Volts, new(AnswerKind.Value, 50, 1), 100);
        var table = OutcomeTable.Of([Low, High], two, broad, Volts);

        Assert.InRange(new Lookahead(two, 3, 0).After(table, [new(table, 1)]).Bits, 0, 0.05);
    }

    [Fact]
    public void Changing_the_bench_costs_what_it_takes()
    {
        var sheet = DemoSheets.Read("kittiwake-15");
        var cost = new ReadingCost(sheet, Setup.Default, false, 0);
        var probe = new Probe("R10", "HT4", "V1.6", ProbeKind.Ohm);
        var pulled = Setup.Default with { Name = "pulled", Pulled = ["V4", "V5"] };
        var lifted = Setup.Cold with { Name = "lifted", Lifted = ["R10"] };

        var plain = cost.Minutes(probe, Setup.Default);
        Assert.Equal(3 + 1, cost.Minutes(probe, Setup.Cold) - plain, 6);
        Assert.Equal(3 + 2 * 0.5, cost.Minutes(probe, pulled) - plain, 6);
        Assert.Equal(3 + 1 + 8, cost.Minutes(probe, lifted) - plain, 6);
        Assert.Equal(4 + 3, cost.After(lifted, false).Minutes(probe, Setup.Default) - plain, 6);
    }

    [Fact]
    public void A_near_certain_suspect_is_proved_with_the_figures_of_a_good_and_a_bad_part()
    {
        var advice = new BenchAdvice(DemoSheets.Read("kittiwake-15").Parts.ToDictionary(p => p.Designator));

        var drifted = advice.Prove(Lead("R10", FailureMode.Drifted, 5, 0.95));
        Assert.Contains("lift one leg of R10", drifted);
        Assert.Contains("this one would show about 500 kohm", drifted);
        Assert.Contains(
            "overload",
            advice.Prove(Lead("C1", FailureMode.Short, 0, 0.95)) + advice.Prove(Lead("D1", FailureMode.Open, 0, 0.9))
        );
        Assert.Contains("known good one", advice.Prove(Lead("V4", FailureMode.LowEmission, 0.25, 0.9)));
        Assert.Equal("", advice.Prove(Lead("R10", FailureMode.Drifted, 5, 0.6)));
    }

    [Fact]
    public void A_plugged_in_part_is_replaced_sooner_than_a_soldered_one()
    {
        var advice = new BenchAdvice(DemoSheets.Read("kittiwake-15").Parts.ToDictionary(p => p.Designator));
        NextReading[] next = [new(Volts, Setup.Default, 0.5, 2, "live", "", [])];

        Assert.StartsWith("Stop measuring, replace V4", advice.Stop(Lead("V4", FailureMode.LowEmission, 0.25, 0.7), next));
        Assert.Equal("", advice.Stop(Lead("T1", FailureMode.Open, 0, 0.7), next));
        Assert.Equal("", advice.Stop(Lead("V4", FailureMode.LowEmission, 0.25, 0.4), next));
    }

    private static Suspect Lead(string part, FailureMode mode, double severity, double probability) =>
        new(part, new(part, "", mode, severity), probability, [part], [], [], [], "");
}
