using Slowglow.Bench.Questions;
using Slowglow.Power.Overload;
using Slowglow.Tests.Circuits;

namespace Slowglow.Tests.Power;

/// <summary>What else overloads a part that has died.</summary>
public sealed class OverloadTests
{
    private static readonly Lazy<BenchUnit> Mixer = new(() => BenchUnit.From(DemoText.Of("saltmarsh-lm2")).Value!);

    private static IReadOnlyList<OverloadCause> Causes(string part) =>
        new FindOverloads(Mixer.Value).Run(part, TestContext.Current.CancellationToken).Value!;

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

    /// <summary>IEC 60127 quick-acting, from memory.</summary>
    [Theory]
    [InlineData(1.5, double.PositiveInfinity)]
    [InlineData(2.1, 1800)]
    [InlineData(2.75, 2)]
    [InlineData(4, 0.3)]
    [InlineData(10, 0.02)]
    public void Slowest_clearing_of_a_quick_fuse(double multiple, double seconds) =>
        Assert.Equal(seconds, FuseTime.Longest(multiple), 1e-9);

    [Fact]
    public void Beyond_ten_times_the_energy_let_through_stays() =>
        Assert.Equal(FuseTime.Longest(10) * 100, FuseTime.Longest(40) * 1600, 1e-9);

    [Theory]
    [InlineData("T9", "there is no part T9")]
    [InlineData("W1", "W1 stands nothing that could be worked out")]
    public void What_cannot_be_is_answered_with_a_sentence(string part, string sentence)
    {
        var answer = new FindOverloads(Mixer.Value).Run(part, TestContext.Current.CancellationToken);
        Assert.Contains(sentence, answer.Findings.Single().Text, StringComparison.Ordinal);
    }
}
