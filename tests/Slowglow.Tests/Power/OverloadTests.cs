using Slowglow.Bench.Questions;
using Slowglow.Power.Overload;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Tests.Circuits;

namespace Slowglow.Tests.Power;

/// <summary>What else overloads a part that has died.</summary>
public sealed class OverloadTests
{
    private static readonly Lazy<BenchUnit> Mixer = new(() => BenchUnit.From(DemoText.Of("saltmarsh-lm2")).Value!);

    private static readonly Lazy<BenchUnit> Combo = new(() => BenchUnit.From(DemoText.Of("kittiwake-15")).Value!);

    private static IReadOnlyList<OverloadCause> Causes(string part) =>
        new FindOverloads(Mixer.Value).Run(part, TestContext.Current.CancellationToken).Value!.Causes;

    [Fact]
    public void A_mains_transformer_dies_of_shorted_diodes_and_reservoirs()
    {
        var causes = Causes("T1");
        Assert.Equal(causes.Select(c => c.Ratio).OrderDescending(), causes.Select(c => c.Ratio));
        Assert.Contains(causes, c => c.Fault == "C1 short");
        Assert.Contains(causes, c => c.Part == "D1" && c.Fault.EndsWith("short", StringComparison.Ordinal));
        Assert.All(causes, c => Assert.True(c.Value > c.Healthy));
    }

    [Fact]
    public void A_mains_fuse_goes_with_the_same_faults()
    {
        var short1 = Causes("F1").Single(c => c.Fault == "C1 short");
        Assert.True(short1.Ratio > 1.15);
    }

    /// <summary>Its own milliwatts would put every fault first that doubles the current, and say of none when it melts.</summary>
    [Fact]
    public void A_fuse_is_overloaded_by_current_over_its_rating_and_melts_in_a_time_that_is_said()
    {
        var causes = new FindOverloads(Combo.Value).Run("F1", TestContext.Current.CancellationToken).Value!.Causes;
        Assert.All(causes, c => Assert.Equal(("A", true), (c.Unit, c.Value > 1.15)));
        Assert.InRange(causes.Single(c => c.Fault == "C1 short").Seconds, 0.1, 10);
        Assert.DoesNotContain(causes, c => c.Part is "V4" or "V5");
    }

    /// <summary>The reservoir of this unit stands behind the fuse of its rail.</summary>
    [Theory]
    [InlineData("F1")]
    [InlineData("F2")]
    public void A_reservoir_behind_a_second_fuse_is_charged_through_both(string fuse)
    {
        var inrush = new FindOverloads(Combo.Value).Run(fuse, TestContext.Current.CancellationToken).Value!.SwitchOn!;
        // Half of C V squared with 47 uF at 310 V, over at most the 42 ohm of the winding and the 16 ohm before it: by hand, from the sheet.
        Assert.InRange(inrush.SquareSeconds, 2.2 / 100, 2.4 / 42);
    }

    /// <summary>IEC 60127 quick-acting, from memory.</summary>
    [Theory]
    [InlineData(1.5, double.PositiveInfinity)]
    [InlineData(2.1, 1800)]
    [InlineData(2.75, 2)]
    [InlineData(4, 0.3)]
    [InlineData(10, 0.02)]
    public void Slowest_clearing_of_a_quick_fuse(double multiple, double seconds) =>
        Assert.Equal(seconds, FuseTime.Longest(multiple, FuseSpeed.Quick), 1e-9);

    /// <summary>IEC 60127 time-lag, from memory. A fuse of no type said is the slower one.</summary>
    [Theory]
    [InlineData(2, double.PositiveInfinity)]
    [InlineData(2.1, 120)]
    [InlineData(2.75, 10)]
    [InlineData(4, 3)]
    [InlineData(10, 0.3)]
    public void Slowest_clearing_of_a_time_lag_fuse(double multiple, double seconds)
    {
        Assert.Equal(seconds, FuseTime.Longest(multiple, FuseSpeed.TimeLag), 1e-9);
        Assert.Equal(seconds, FuseTime.Longest(multiple, FuseSpeed.Unsaid), 1e-9);
    }

    [Theory]
    [InlineData("fuse T250mA", FuseSpeed.TimeLag)]
    [InlineData("fuse 250mA slow", FuseSpeed.TimeLag)]
    [InlineData("fuse F250mA", FuseSpeed.Quick)]
    [InlineData("fuse 250mA quick", FuseSpeed.Quick)]
    [InlineData("fuse 250mA", FuseSpeed.Unsaid)]
    public void The_letter_on_the_cap_says_how_quickly_it_acts(string words, FuseSpeed speed)
    {
        var text = DemoText.Of("saltmarsh-lm2").Replace("fuse 250mA", words, StringComparison.Ordinal);
        var fuse = BenchUnit.From(text).Value!.Sheet.Parts.OfType<FusePart>().Single(f => f.Designator == "F1");
        Assert.Equal(speed, fuse.Speed);
        Assert.Equal(0.25, fuse.RatedAmps);
    }

    /// <summary>A fuse far too large leaves the transformer to burn, and the answer names what does it.</summary>
    [Fact]
    public void A_fuse_too_large_saves_nothing()
    {
        var cancel = TestContext.Current.CancellationToken;
        var text = DemoText.Of("saltmarsh-lm2").Replace("fuse 250mA", "fuse T10A", StringComparison.Ordinal);
        var large = BenchUnit.From(text).Value!;
        var causes = new FindOverloads(large).Run("T1", cancel).Value!.Causes;
        var part = large.Sheet.Parts.Single(p => p.Designator == "T1");
        Assert.Contains(causes, c => c.IsUnprotected);
        Assert.All(causes, c => Assert.Null(c.ClearedBy));
        Assert.Contains("save T1 from 0 of", OverloadCause.Protection(part, causes), StringComparison.Ordinal);
        Assert.Equal("", OverloadCause.Protection(large.Sheet.Parts.Single(p => p.Designator == "F1"), causes));
    }

    [Fact]
    public void Beyond_ten_times_the_energy_let_through_stays() =>
        Assert.Equal(FuseTime.Longest(10, FuseSpeed.Quick) * 100, FuseTime.Longest(40, FuseSpeed.Quick) * 1600, 1e-9);

    [Theory]
    [InlineData("T9", "there is no part T9")]
    [InlineData("W1", "W1 stands nothing that could be worked out")]
    public void What_cannot_be_is_answered_with_a_sentence(string part, string sentence)
    {
        var answer = new FindOverloads(Mixer.Value).Run(part, TestContext.Current.CancellationToken);
        Assert.Contains(sentence, answer.Findings.Single().Text, StringComparison.Ordinal);
    }
}
