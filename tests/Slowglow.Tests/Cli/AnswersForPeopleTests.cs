using Xunit;

namespace Slowglow.Tests.Cli;

/// <summary>Answers as text: readable, plain when redirected, findings where they belong.</summary>
public class AnswersForPeopleTests
{
    private const string Combo = "demo/kittiwake-15/sheet.yaml";

    [Theory]
    [InlineData("check", Combo)]
    [InlineData("expect", Combo)]
    [InlineData("levels", Combo, "--fault", "R10 x5")]
    [InlineData("diagnose", Combo, "demo/kittiwake-15/readings.yaml")]
    public async Task Redirected_output_holds_no_escape_codes(params string[] words)
    {
        var run = await RunCommand.InRoot(words);
        Assert.Equal(0, run.Code);
        Assert.DoesNotContain('\u001b', run.Out + run.Error);
        Assert.DoesNotContain("NaN", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_wrong_sheet_is_told_on_the_error_stream_with_its_place()
    {
        var run = await RunCommand.WithInput("sheet: 1\nunit: X\nparts:\n  R1: 4k7 A -> \n", "expect", "-");
        Assert.Equal(2, run.Code);
        Assert.Equal("", run.Out);
        Assert.Contains("(standard input), line 4, column ", run.Error, StringComparison.Ordinal);
        Assert.Contains(": error: ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_fault_the_part_cannot_have_is_answered_with_those_it_can()
    {
        var run = await RunCommand.InRoot("levels", Combo, "--fault", "R10 low emission 40 %");
        Assert.Equal(2, run.Code);
        Assert.Contains("R10 does not fail that way; what can be computed: R10 open", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_unknown_setup_is_answered_with_the_known_ones()
    {
        var run = await RunCommand.InRoot("expect", Combo, "--setup", "slow");
        Assert.Equal(2, run.Code);
        Assert.Contains("no setup is called \"slow\"; name one of bench, cold", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Levels_say_in_words_what_the_fault_does_to_each_channel()
    {
        var run = await RunCommand.InRoot("levels", Combo, "--fault", "R10 open");
        Assert.Matches("First channel (is silent where|gives) .* belongs", run.Out);
        Assert.Contains("Second channel is as it should be", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Readings_put_the_drifted_anode_load_first()
    {
        var run = await RunCommand.InRoot("diagnose", Combo, "demo/kittiwake-15/readings.yaml");
        Assert.Matches(@"\n\s*1\s+R10\s", run.Out);
    }

    [Fact]
    public async Task Levels_say_what_ends_the_clean_range_and_where_hum_and_noise_come_from()
    {
        var run = await RunCommand.InRoot("levels", Combo);
        Assert.Matches("Clean until +V[45] draws grid current", run.Out);
        Assert.Matches("Input impedance, 1 kHz +8[0-9]{2} kohm", run.Out);
        Assert.Matches("HT0 +[0-9.]+ V", run.Out);
        Assert.Contains("Noise comes from", run.Out, StringComparison.Ordinal);
        Assert.Contains("Against 1 kHz", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_shorted_input_is_a_setup()
    {
        var open = await RunCommand.InRoot("levels", Combo, "--json");
        var shorted = await RunCommand.InRoot("levels", Combo, "--setup", "input=shorted", "--json");
        static double Noise(CommandRun run) =>
            System
                .Text.Json.JsonDocument.Parse(run.Out)
                .RootElement.GetProperty("channels")[0]
                .GetProperty("noise")
                .GetProperty("level")
                .GetDouble();
        Assert.Equal(0, shorted.Code);
        Assert.Contains("\"input\": \"shorted\"", shorted.Out, StringComparison.Ordinal);
        Assert.True(Noise(shorted) <= Noise(open));
    }
}
