using Slowglow.Workshop.Collecting;
using Slowglow.Workshop.Money;
using Xunit;

namespace Slowglow.Tests.Workshop.Collecting;

public sealed class StorageRuleTests
{
    private static readonly DateOnly Told = new(2026, 3, 2);
    private static readonly StorageRule Rule = new(30, 1.50m, 60, [14, 30, 60]);

    /// <summary>30 days are free; the 31st costs 1.50; 40 paid days are 60.00, and no more is ever charged.</summary>
    [Theory]
    [InlineData(0, 0)]
    [InlineData(30, 0)]
    [InlineData(31, 1.50)]
    [InlineData(50, 30)]
    [InlineData(70, 60)]
    [InlineData(400, 60)]
    [InlineData(-3, 0)]
    public void Fee_begins_after_the_free_days_and_ends_at_the_most(int days, decimal fee) =>
        Assert.Equal(new Amount(fee, "EUR"), Rule.Fee(Told, Told.AddDays(days), "EUR"));

    [Theory]
    [InlineData(13, 0)]
    [InlineData(14, 1)]
    [InlineData(59, 2)]
    [InlineData(60, 3)]
    public void Reminders_fall_due_one_after_the_other(int days, int due) =>
        Assert.Equal(due, Rule.Due(Told, Told.AddDays(days)));
}
