using Slowglow.Bench.Questions;
using Slowglow.Power;
using Slowglow.Power.Stress;
using Slowglow.Tests.Circuits;

namespace Slowglow.Tests.Power;

/// <summary>Stress over the situations, ratings to fit, and parts exchanged.</summary>
public sealed class StressTests
{
    private static readonly Lazy<BenchUnit> Combo = new(() => BenchUnit.From(DemoText.Of("kittiwake-15")).Value!);

    private static IReadOnlyList<StressRow> Rows(string sheet) =>
        new StressQuestion(SheetOnBench.From(sheet).Worlds).Ask(TestContext.Current.CancellationToken);

    [Fact]
    public void A_resistor_across_high_mains_is_at_its_worst_there()
    {
        var rows = Rows($"{Beds.HighTension}\n  R7: 100k 0.5W HT -> GND\n  R8: 100k HT -> GND\n");
        var rated = rows.Single(r => r.Part == "R7" && r.What == "heat");
        Assert.Equal("mains 10 % high", rated.Situation);
        Assert.Equal(0.5, rated.Rated, 1e-6);
        Assert.True(rated.IsOver);
        Assert.Equal(rated, rows[0]);
        var volts = SheetOnBench
            .From($"{Beds.HighTension}\n  R7: 100k 0.5W HT -> GND\n  R8: 100k HT -> GND\n")
            .Volts("HT", new() { Name = "high", MainsVolts = 253 });
        Assert.Equal(volts * volts / 100e3, rated.Value, 0.01 * rated.Value);
    }

    [Fact]
    public void Reservoirs_of_a_valve_unit_are_at_their_worst_with_the_valves_cold()
    {
        var rows = new StressQuestion(Combo.Value.Worlds).Ask(TestContext.Current.CancellationToken);
        var reservoir = rows.Single(r => r.Part == "C4" && r.What == "volts");
        Assert.Equal("mains 10 % high, valves cold or pulled", reservoir.Situation);
        Assert.Equal(450, reservoir.Rated, 1e-6);
    }

    /// <summary>reference/resistor_derating.csv, within 7 % of the rating: the published points bend a little.</summary>
    /// <summary>550 V cold, 300 V drawing: Philips, EL84 data sheets, 1953-1955, p6. The 12AX7 sheets at hand (Brimar, Tung-Sol) give 300 V and no cold figure.</summary>
    [Fact]
    public void A_valve_that_does_not_draw_is_held_to_the_makers_cold_volts()
    {
        var unit = BenchUnit.From(DemoText.Of("kittiwake-15")).Value!;
        var rows = new StressQuestion(unit.Worlds).Ask(TestContext.Current.CancellationToken);
        var (output, first) = (
            rows.Single(r => (r.Part, r.What) == ("V4", "volts")),
            rows.Single(r => (r.Part, r.What) == ("V1", "volts"))
        );
        Assert.Contains(output.Rated, new[] { 300.0, 550.0 });
        Assert.Equal(output.Situation.Contains("cold", StringComparison.Ordinal) ? 550 : 300, output.Rated, 1e-6);
        Assert.Equal(300, first.Rated, 1e-6);
        Assert.DoesNotContain("cold", first.Situation, StringComparison.Ordinal);
    }

    [Fact]
    public void Derating_of_resistors()
    {
        foreach (var row in Published.Table("resistor_derating"))
        {
            var share = NeededRating.Share(row["style"] == "wirewound", Published.Number(row["temperature_celsius"]));
            Assert.Equal(Published.Number(row["percent_of_rated_power"]) / 100, share, 0.07);
        }
    }

    [Fact]
    public void Electrolytics_come_in_the_volts_they_are_sold_in()
    {
        var sold = Published
            .Table("capacitor_voltage_ratings")
            .Where(r => r["kind"] == "aluminium electrolytic, rated")
            .Select(r => Published.Number(r["volts"]));
        Assert.All(sold, v => Assert.Equal(v, StandardSizes.ElectrolyticVoltsFor(v - 0.1)));
    }

    private static Replacement Replace(string words)
    {
        var answer = new ReplacePart(Combo.Value, DemoText.Of("kittiwake-15")).Run(words, TestContext.Current.CancellationToken);
        Assert.True(answer.Value is not null, string.Join('\n', answer.Findings));
        return answer.Value;
    }

    [Fact]
    public void An_anode_load_of_other_ohms_moves_its_own_anode()
    {
        var r = Replace("R10 with 220k 1W");
        Assert.Contains("100k", r.Was, StringComparison.Ordinal);
        Assert.Contains("220k", r.Is, StringComparison.Ordinal);
        var anode = r.Moved.Single(m => m.Before.Probe.Where == "V1.6" && m.Before.Probe.KindText == "dc");
        Assert.True(anode.Now < anode.Before.Nominal);
        Assert.False(anode.InBand);
    }

    [Fact]
    public void The_same_part_again_moves_nothing()
    {
        var r = Replace("R10 with 100k 1W carbon");
        Assert.Empty(r.Moved);
        Assert.Equal(r.OverBefore.Count, r.Over.Count);
    }

    [Fact]
    public void A_small_resistor_in_a_hot_place_comes_over_its_rating()
    {
        var r = Replace("R40 with 130 0.5W");
        Assert.Contains(r.Over, o => o.Part == "R40" && o.What == "heat");
    }

    [Fact]
    public void A_pot_keeps_its_control_and_taper()
    {
        var r = Replace("VR3 with 470k");
        Assert.Contains("470k", r.Is, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("R10", "does not say what comes in the place of what")]
    [InlineData("R999 with 1k", "there is no part R999")]
    [InlineData("T1 with transformer 50 VA", "T1 is not written on one line")]
    [InlineData("R10 with minus", "with \"minus\"")]
    public void What_cannot_be_is_answered_with_a_sentence(string words, string sentence)
    {
        var answer = new ReplacePart(Combo.Value, DemoText.Of("kittiwake-15")).Run(words, TestContext.Current.CancellationToken);
        Assert.Null(answer.Value);
        Assert.Contains(answer.Findings, f => f.Text.Contains(sentence, StringComparison.Ordinal));
    }
}
