using Slowglow.Bench.Jobs.Demo;
using Slowglow.Sheets;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Tests.Bench.Jobs;

public sealed class JobCardReaderTests
{
    [Fact]
    public void Card_is_read_whole()
    {
        var card = JobCardReader
            .Read(
                """
                customer: Ada Fenwick
                phone: 01632 960417
                maker: Harrow & Pike
                booked-in: 2026-11-16
                condition:
                  - one knob missing
                limit: 180 GBP
                state: awaiting parts
                """
            )
            .Value!;

        Assert.Equal(("Ada Fenwick", "01632 960417", "Harrow & Pike"), (card.Customer, card.Contact, card.Maker));
        Assert.Equal("180.00 GBP", card.Limit!.ToString());
        Assert.Equal(JobState.AwaitingParts, card.State);
        Assert.Equal(["one knob missing"], card.Condition);
        Assert.Equal(16, card.BookedIn!.Value.Day);
        Assert.Null(card.Promised);
    }

    [Theory]
    [InlineData("limit: lots", "\"lots\" is not understood under limit.")]
    [InlineData("promised: soon", "\"soon\" is not understood under promised.")]
    [InlineData("state: asleep", "\"asleep\" is not understood under state.")]
    public void What_is_not_understood_is_left_out_and_said(string text, string said)
    {
        var read = JobCardReader.Read("customer: Ada Fenwick\n" + text);

        var finding = Assert.Single(read.Findings);
        Assert.Equal((said, Severity.Warning, 2), (finding.Text, finding.Severity, finding.Place.Line));
        Assert.NotNull(read.Value);
    }

    [Theory]
    [InlineData("customer: [")]
    [InlineData("- a list")]
    [InlineData("")]
    public void Text_that_is_no_card_is_an_error(string text)
    {
        var read = JobCardReader.Read(text);

        Assert.Null(read.Value);
        Assert.Equal(Severity.Error, Assert.Single(read.Findings).Severity);
    }

    [Theory]
    [InlineData("[", 50_000)]
    [InlineData("- ", 5_000)]
    public void Bottomless_nesting_is_refused(string piece, int times) =>
        Assert.Null(JobCardReader.Read(string.Concat(Enumerable.Repeat(piece, times))).Value);
}
