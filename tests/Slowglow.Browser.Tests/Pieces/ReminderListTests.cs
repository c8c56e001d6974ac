using Slowglow.Bench.Counter;
using Slowglow.Web.Counter;
using Slowglow.Workshop.Collecting;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Browser.Tests.Pieces;

public sealed class ReminderListTests
{
    private static readonly BoardCard Card = new()
    {
        JobNumber = 1004,
        Customer = "Ottoline Marsh",
        Unit = "Tern 2",
    };

    [Fact]
    public async Task Says_whom_to_remind_of_what()
    {
        var html = await ListAsync(
            new(ReminderKind.Collect, "", "", new(2026, 11, 2), 2),
            new(ReminderKind.Chase, "Invented Winder", "1 x rewind T1", new(2026, 11, 9), 1)
        );

        Assert.Contains("Ottoline Marsh: ready since 2 Nov 2026, reminder 2 to collect it", html);
        Assert.Contains("Invented Winder: 1 x rewind T1, no word since 9 Nov 2026", html);
        Assert.Contains(StorageRule.CheckLaw, html);
    }

    [Fact]
    public async Task Nothing_to_remind_of_is_nothing_to_see() => Assert.Equal("", (await ListAsync()).Trim());

    private static Task<string> ListAsync(params DueReminder[] due) =>
        Drawn.AsHtmlAsync<ReminderList>(new() { ["Reminders"] = due.Select(d => new JobReminder(Card, d)).ToList() });
}
