using Slowglow.Workshop.Labour;
using Xunit;

namespace Slowglow.Tests.Workshop.Labour;

public sealed class HoursRuleTests
{
    /// <summary>Steps of 15 minutes, half an hour at least.</summary>
    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 30)]
    [InlineData(30, 30)]
    [InlineData(31, 45)]
    [InlineData(45, 45)]
    [InlineData(46, 60)]
    [InlineData(125, 135)]
    public void Minutes_are_charged_in_begun_steps(int worked, int charged) =>
        Assert.Equal(charged, new HoursRule(15, 30).Charge(worked));

    [Theory]
    [InlineData(45, 0.75)]
    [InlineData(20, 0.33)]
    [InlineData(135, 2.25)]
    public void Hours_carry_two_decimals(int minutes, decimal hours) => Assert.Equal(hours, HoursRule.Hours(minutes));
}
