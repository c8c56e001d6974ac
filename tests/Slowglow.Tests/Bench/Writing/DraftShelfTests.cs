using Slowglow.Bench.Writing;

namespace Slowglow.Tests.Bench.Writing;

public sealed class DraftShelfTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("slowglow-drafts-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Draft_is_there_for_a_program_started_anew_until_it_is_cleared()
    {
        Assert.True(Shelf().Keep(1001, "abcd1234", "R1: 4k7", 3));

        var kept = Assert.Single(Shelf().Of(1001));

        Assert.Equal(("abcd1234", "R1: 4k7", 3), (kept.Window, kept.Text, kept.BasedOn));
        Assert.Empty(Shelf().Of(100));
        Shelf().Clear(1001, "abcd1234");
        Assert.Empty(Shelf().Of(1001));
    }

    [Theory]
    [InlineData("../evil")]
    [InlineData("")]
    [InlineData("a/b/c/d")]
    public void Name_that_could_lead_out_of_the_folder_is_refused(string window)
    {
        Assert.False(Shelf().Keep(1001, window, "x", null));
        Assert.Empty(Directory.GetFiles(folder, "*", SearchOption.AllDirectories));
    }

    [Fact]
    public void Draft_that_a_power_cut_left_half_written_is_passed_over_and_named()
    {
        Shelf().Keep(1001, "abcd1234", "whole", null);
        File.WriteAllText(Path.Combine(folder, "job-1001-efgh5678.json"), "{\"Window\":\"efgh");

        Assert.Equal("whole", Assert.Single(Shelf().Of(1001)).Text);
        Assert.Equal(["job-1001-efgh5678.json"], Shelf().UnreadableOf(1001));
        Assert.Empty(Shelf().UnreadableOf(100));
    }

    private DraftShelf Shelf() => new(folder, TimeProvider.System);
}
