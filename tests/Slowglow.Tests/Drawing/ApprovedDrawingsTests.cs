using Xunit;

namespace Slowglow.Tests.Drawing;

/// <summary>Drawings that a person has looked at stay as they are until a person looks again.</summary>
public class ApprovedDrawingsTests
{
    public static TheoryData<string> Names() => DrawnSheets.Names();

    /// <summary>Set SLOWGLOW_APPROVE=1 to put new drawings in place of the approved ones; look at them before they are committed.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void A_drawing_is_the_approved_one(string name)
    {
        var svg = DrawnSheets.Draw(name).Svg;
        if (Environment.GetEnvironmentVariable("SLOWGLOW_APPROVE") == "1")
        {
            File.WriteAllText(DrawnSheets.ApprovedPath(name), svg);
        }

        var approved = File.ReadAllText(DrawnSheets.ApprovedPath(name));
        Assert.True(approved == svg, $"{name} is drawn differently; look at it, then approve it (see docs/drawing.md)");
    }

    [Fact]
    public void All_of_them_are_there() => Assert.Equal(23, DrawnSheets.Names().Count);
}
