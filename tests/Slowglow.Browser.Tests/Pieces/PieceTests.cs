using Slowglow.Bench.Jobs;
using Slowglow.Web.Bench;
using Slowglow.Web.Desks;
using Slowglow.Workshop.Words;

namespace Slowglow.Browser.Tests.Pieces;

public sealed class PieceTests
{
    [Fact]
    public async Task Colour_never_stands_without_its_word()
    {
        var html = await TableAsync(Invented.Picture());

        Assert.Contains("verdict low", html);
        Assert.Contains("<span class=\"word\">far too low</span>", html);
        Assert.Contains("<span class=\"word\">as expected</span>", html);
    }

    [Fact]
    public async Task Measured_point_is_not_listed_again_as_unmeasured()
    {
        var html = await TableAsync(Invented.Picture());

        Assert.Equal(1, Count(html, "data-point=\"V1.6\""));
        Assert.Equal(1, Count(html, "data-point=\"V1.8\""));
    }

    [Fact]
    public async Task Reading_not_weighed_yet_says_so_and_keeps_what_belongs()
    {
        var picture = Invented.Picture() with { Diagnosis = null };

        var html = await TableAsync(picture);

        Assert.Contains("being weighed", html);
        Assert.Contains("181 V", html);
    }

    [Fact]
    public async Task Suspects_of_older_evidence_are_marked_stale()
    {
        var picture = Invented.Picture();
        var stale = picture with { Diagnosis = picture.Diagnosis! with { For = "evidence 1" } };

        Assert.DoesNotContain("Stale", await Drawn.AsHtmlAsync<NextList>(With(picture)));
        Assert.Contains("Stale", await Drawn.AsHtmlAsync<NextList>(With(stale)));
        Assert.Contains("Stale", await Drawn.AsHtmlAsync<LevelsCard>(With(stale)));
        Assert.Contains("Stale", await Drawn.AsHtmlAsync<RootCauseList>(With(stale)));
    }

    [Fact]
    public async Task Expectations_of_another_setup_are_marked_stale()
    {
        var picture = Invented.Picture();
        var moved = picture with { Job = picture.Job! with { Chosen = Invented.Cold } };

        Assert.DoesNotContain("Stale", await TableAsync(picture));
        Assert.Contains("Stale", await TableAsync(moved));
    }

    [Theory]
    [InlineData(TradeWords.Valve, "The anode of V1")]
    [InlineData(TradeWords.Tube, "The plate of V1")]
    public async Task Program_speaks_in_the_words_of_the_shop(TradeWords words, string expected)
    {
        var html = await Drawn.AsHtmlAsync<SuspectItem>(
            new()
            {
                ["Suspect"] = Invented.Drifted,
                ["Sheet"] = Invented.Sheet,
                ["Open"] = true,
            },
            words
        );

        Assert.Contains(expected, html);
    }

    [Fact]
    public async Task Levels_say_which_channel_is_hurt_and_which_is_not()
    {
        var html = await Drawn.AsHtmlAsync<LevelsCard>(With(Invented.Picture()));

        Assert.Contains("First channel gives 3.1 V where 9 V belongs.", html);
        Assert.Contains("Second channel is as it should be", html);
    }

    [Fact]
    public void Proposed_reading_becomes_a_line_with_a_gap_for_the_figure()
    {
        var line = Slowglow.Bench.Jobs.LineToType.Of(Invented.Next.Probe, Invented.Next.Setup, "bench");

        Assert.Equal(("R10 = ", " ohm on cold"), (line.Before, line.After));
    }

    private static Task<string> TableAsync(DeskPicture picture) => Drawn.AsHtmlAsync<ExpectedTable>(With(picture));

    private static Dictionary<string, object?> With(DeskPicture picture) => new() { ["Picture"] = picture };

    private static int Count(string text, string part) => text.Split(part).Length - 1;
}
