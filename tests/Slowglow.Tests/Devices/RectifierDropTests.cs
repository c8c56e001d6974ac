using Xunit;

namespace Slowglow.Tests.Devices;

/// <summary>Anode drops of rectifier valves, tests/reference/rectifier_valve_drops.csv.</summary>
public class RectifierDropTests
{
    private const string Table = "rectifier_valve_drops.csv";

    public static TheoryData<string> Drops() => [.. ValveRow.Read(Table).Select(Name)];

    /// <summary>Where makers disagree (5Y3GT 50 or 60 V, 5U4G 44 to 50 V) the library stands between them, so 12 %.</summary>
    [Theory]
    [MemberData(nameof(Drops))]
    public void DropsWhatTheMakerSays(string name)
    {
        var row = ValveRow.Read(Table).First(r => Name(r) == name);
        var amps = row.Number("anode_milliamps") / 1e3;
        var volts = Bisection.Zero(v => amps - PlainValveLaw.Rectifier(row.Device, v), 0, 500);
        var published = row.Number("drop_volts");
        Assert.InRange(volts, published * 0.88, published * 1.12);
    }

    /// <summary>The EZ80's curve was read to 0.4 V.</summary>
    [Fact]
    public void FollowsTheEz80Curve() =>
        Assert.All(
            ValveRow.Read(Table).Where(r => r["valve"] == "EZ80"),
            row =>
                Assert.Equal(
                    row.Number("anode_milliamps"),
                    PlainValveLaw.Rectifier(row.Device, row.Number("drop_volts")) * 1e3,
                    4.5
                )
        );

    private static string Name(ValveRow row) => row.Label("drop_volts", "anode_milliamps");
}
