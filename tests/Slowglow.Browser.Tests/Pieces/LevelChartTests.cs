using Slowglow.Web.Bench;

namespace Slowglow.Browser.Tests.Pieces;

public sealed class LevelChartTests
{
    /// <summary>A milliwatt in 600 ohm is 0 dBu by its definition, ten times the volts 20 dB.</summary>
    [Fact]
    public void Ten_times_the_volts_are_twenty_decibels()
    {
        var one = Math.Sqrt(0.001 * 600);
        var scale = new LevelScale([new("level", one, 10 * one), new("hum", one / 1000, double.NaN)]);

        Assert.Equal((-60.0, 20.0), (scale.From, scale.To));
        Assert.Equal([-60.0, -40, -20, 0, 20], scale.Lines);
        Assert.Equal(0.75, scale.Share(one)!.Value, 1e-9);
        Assert.Equal(1, scale.Share(10 * one)!.Value, 1e-9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(double.NaN)]
    public async Task A_channel_that_gives_nothing_says_so_and_keeps_the_ring_of_what_belongs(double now)
    {
        var html = await ChartAsync([new("level", now, 4.35)]);

        Assert.Contains("nothing now", html);
        Assert.Contains("class=\"belongs\"", html);
        Assert.DoesNotContain("class=\"now\"", html);
        Assert.DoesNotContain("NaN", html);
    }

    [Fact]
    public async Task No_figure_at_all_still_is_a_chart() =>
        Assert.Contains("20 dBu", await ChartAsync([new("hum", double.NaN, double.NaN)]));

    private static Task<string> ChartAsync(IReadOnlyList<LevelMark> marks) =>
        Drawn.AsHtmlAsync<LevelChart>(
            new() { [nameof(LevelChart.Marks)] = marks, [nameof(LevelChart.Sentence)] = "Levels of an invented channel." }
        );
}
