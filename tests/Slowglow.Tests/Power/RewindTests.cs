using Slowglow.Bench.Questions;
using Slowglow.Power.Rewinding;
using Slowglow.Tests.Circuits;

namespace Slowglow.Tests.Power;

/// <summary>Rewinding from a sheet: rails, measurements, bad input.</summary>
public sealed class RewindTests
{
    private static BenchUnit Unit(string name) => BenchUnit.From(DemoText.Of(name)).Value!;

    private static RewindAnswer Rewind(BenchUnit unit, RewindRequest? request = null, params string[] measured)
    {
        var answer = new RewindTransformer(unit).Run("T1", measured, request ?? new(), TestContext.Current.CancellationToken);
        Assert.True(answer.Value is not null, string.Join('\n', answer.Findings));
        return answer.Value;
    }

    private static string Wrong(string unit, params string[] measured)
    {
        var answer = new RewindTransformer(Unit(unit)).Run("T1", measured, new(), TestContext.Current.CancellationToken);
        Assert.Null(answer.Value);
        return string.Join('\n', answer.Findings.Select(f => $"{f.Text}; {f.Remedy}"));
    }

    [Theory]
    [InlineData("kittiwake-15")]
    [InlineData("saltmarsh-lm2")]
    [InlineData("heronsgate-m60")]
    public void A_design_put_back_gives_the_rails_within_2_percent(string name)
    {
        var answer = Rewind(Unit(name));
        Assert.Null(answer.Refusal);
        Assert.True(answer.Design.Fits);
        Assert.NotEmpty(answer.Rails);
        Assert.All(answer.Rails, r => Assert.InRange(r.Error, 0, 0.02));
    }

    [Fact]
    public void A_primary_for_several_mains_gives_the_rails_too()
    {
        var answer = Rewind(Unit("kittiwake-15"), new RewindRequest { Mains = [100, 120, 220, 230, 240] });
        Assert.All(answer.Rails, r => Assert.InRange(r.Error, 0, 0.02));
        Assert.Equal(2, answer.Design.Windings.Count(w => w.Need.IsPrimary));
    }

    [Fact]
    public void A_core_too_small_is_refused_with_the_figure_and_a_larger_one_is_named()
    {
        var answer = Rewind(Unit("kittiwake-15"), null, "core = EI60", "stack = 20 mm");
        Assert.Matches("^T1 cannot be wound on EI60, stack 20 mm: [a-z ].* [0-9.]+ .*, at most [0-9.]+", answer.Refusal);
        Assert.NotNull(answer.Larger);
        Assert.True(answer.Larger.Fits);
    }

    [Fact]
    public void What_was_measured_goes_before_the_drawing()
    {
        var unit = Unit("kittiwake-15");
        var drawn = Rewind(unit).Duties.Single(d => d.Name == "HT");
        var measured = Rewind(unit, null, "P/HT = 0.98", "HT = 60 ohm").Duties.Single(d => d.Name == "HT");
        Assert.Equal(230 / 0.98, measured.OffLoadVolts, 0.5);
        Assert.Equal(60, measured.ColdOhms, 1e-6);
        Assert.NotEqual(drawn.OffLoadVolts, measured.OffLoadVolts, 1.0);
    }

    [Theory]
    [InlineData("core = EI99", "there is no core EI99; sizes known: EI30, EI42")]
    [InlineData("P = -16 ohm", "'-16 ohm' cannot be; it must be ohms, such as 16 ohm")]
    [InlineData("XX = 16 ohm", "T1 has no winding XX; its windings are P, HT, LT")]
    [InlineData("P/P = 1", "a ratio is between two different windings")]
    [InlineData("P/HT = 0", "'0' cannot be; it must be a plain ratio above zero")]
    [InlineData("P/HT = 30", "the two cannot be the same winding")]
    [InlineData("stack = thick", "'thick' is no length; write millimetres")]
    [InlineData("P smell = 3", "'smell' is nothing that is measured on a winding")]
    [InlineData("nonsense", "there is no figure in it")]
    public void A_measurement_that_cannot_be_is_answered_with_a_sentence(string line, string sentence) =>
        Assert.Contains(sentence, Wrong("kittiwake-15", line), StringComparison.Ordinal);

    [Fact]
    public void Ratios_that_contradict_each_other_are_told() =>
        Assert.Contains(
            "P/LT = 25 cannot be true beside the other ratios",
            Wrong("kittiwake-15", "P/HT = 0.95", "HT/LT = 37", "P/LT = 25"),
            StringComparison.Ordinal
        );

    [Fact]
    public void So_few_turns_that_no_iron_carries_the_flux() =>
        Assert.Contains(
            "which no iron carries",
            Wrong("kittiwake-15", "core = EI66", "stack = 22 mm", "P turns = 300"),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("R5", "R5 is no transformer; mains transformers here: T1")]
    [InlineData("T2", "T2 is not fed from the mains; mains transformers here: T1")]
    [InlineData("T9", "there is no part T9; mains transformers here: T1")]
    public void Other_parts_are_not_rewound(string part, string sentence)
    {
        var answer = new RewindTransformer(Unit("kittiwake-15")).Run(part, [], new(), TestContext.Current.CancellationToken);
        Assert.Contains(sentence, $"{answer.Findings[0].Text}; {answer.Findings[0].Remedy}", StringComparison.Ordinal);
    }

    [Fact]
    public void A_wound_part_is_checked_against_its_specification()
    {
        var unit = Unit("kittiwake-15");
        var answer = Rewind(unit);
        var primary = answer.Design.Of("P");
        var good = FormattableString.Invariant($"P = {primary.ColdOhms * 1.03:0.###} ohm");
        var form = RewindTransformer.Check(answer, [good, "P/HT = 2", "off load = 2 A"]).Value!;
        Assert.True(form.Single(r => r.What.StartsWith("ohms of P", StringComparison.Ordinal)).Passes);
        Assert.False(form.Single(r => r.What.StartsWith("P/HT", StringComparison.Ordinal)).Passes);
        Assert.False(form.Single(r => r.Unit == "A").Passes);
        Assert.Null(form.Single(r => r.What.StartsWith("ohms of LT", StringComparison.Ordinal)).Passes);
    }

    /// <summary>What held at fewer volts than specified has proved nothing.</summary>
    [Theory]
    [InlineData(4000, true, "passes")]
    [InlineData(2000, true, "too few volts")]
    [InlineData(double.NaN, true, "too few volts")]
    [InlineData(4000, false, "broke down")]
    [InlineData(4000, null, "")]
    public void A_flash_test_passes_when_it_held_at_the_volts_specified(double volts, bool? held, string word)
    {
        var check = new FlashCheck(new FlashTest("P and everything else with the core", 4000, 60, ""), volts, held);
        Assert.Equal(word, check.Word);
        Assert.Equal(held is null ? null : word == "passes", check.Passes);
    }
}
