using Slowglow.Bench.Questions;
using Xunit;

namespace Slowglow.Tests.Bench.Questions;

public class LevelWordsTests
{
    private static readonly ChannelLevels Healthy = new("first", 0.05, 3.4, 11, 0.2, 15.1, 0.002, 0, []);

    [Fact]
    public void A_weak_channel_is_said_to_be_weak()
    {
        var words = LevelWords.Compare(Healthy, Healthy with { LevelVolts = 1.2 });
        Assert.Equal(["First channel gives 1.2 V where 3.4 V belongs."], words);
    }

    [Fact]
    public void A_channel_that_clips_early_is_said_in_watts()
    {
        var words = LevelWords.Compare(Healthy, Healthy with { CleanVolts = 2, CleanWatts = 0.5 });
        Assert.Equal(["First channel stays clean only up to 500 mW, where 15 W belongs."], words);
    }

    [Fact]
    public void Silence_hum_and_offset_have_their_own_words()
    {
        var words = LevelWords.Compare(
            Healthy,
            Healthy with
            {
                LevelVolts = 0,
                CleanVolts = double.NaN,
                HumVolts = 0.3,
                OffsetVolts = 12,
            }
        );
        Assert.Equal(
            [
                "First channel is silent where 3.4 V belongs.",
                "First channel hums: 300 mV without signal, where 2 mV belongs.",
                "First channel has 12 V DC on its output, where 0 V belongs.",
            ],
            words
        );
    }

    [Fact]
    public void Nothing_is_said_of_a_difference_nobody_hears()
    {
        var words = LevelWords.Compare(Healthy, Healthy with { LevelVolts = 3.2 });
        Assert.Equal(["First channel is as it should be: 3.2 V at the output."], words);
    }

    [Fact]
    public void A_world_without_figures_is_not_called_silent()
    {
        var words = LevelWords.Compare(Healthy, Healthy with { LevelVolts = double.NaN });
        Assert.Contains("First channel cannot be computed: this world does not settle.", words);
    }
}
