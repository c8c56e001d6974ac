using Slowglow.Circuits;
using Xunit;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>The harness itself, against laws one can do by hand.</summary>
public sealed class HarnessTests
{
    [Fact]
    public void A_divider_divides()
    {
        string[] deck = ["divider", "v1 n1 0 dc 10", "r1 n1 n2 3k", "r2 n2 0 1k", ".end"];
        var volts = NgSpice.Run(deck, "op", ["n2"]);
        Assert.Equal(2.5, volts["n2"][0], 1e-9);
    }

    [Fact]
    public void A_broken_deck_is_told_and_the_next_one_runs()
    {
        string[] broken = ["broken", "q1 n1 n2 n3 nomodel", ".end"];
        Assert.Throws<InvalidOperationException>(() => NgSpice.Run(broken, "op", ["n2"]));
        A_divider_divides();
    }

    [Fact]
    public void Figures_of_a_raised_sine_are_its_mean_and_rms()
    {
        double[] time = [.. Enumerable.Range(0, 1001).Select(i => i * 2e-5)];
        double[] volts = [.. time.Select(t => 5 + (3 * Math.Sin(2 * Math.PI * 50 * t)))];
        var figures = CycleFigures.Of(time, volts, 0, 0.02);
        Assert.Equal(5, figures.Mean, 1e-6);
        Assert.Equal(3 / Math.Sqrt(2), figures.Ripple, 1e-4);
    }
}
