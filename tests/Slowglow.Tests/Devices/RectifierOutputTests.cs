using Slowglow.Tests.Devices.Stages;
using Xunit;

namespace Slowglow.Tests.Devices;

/// <summary>DC volts of full-wave rectifier valves into a reservoir, solved as sheets: tests/reference/rectifier_valve_outputs.csv.</summary>
public class RectifierOutputTests
{
    private const string Table = "rectifier_valve_outputs.csv";

    private static IEnumerable<ValveRow> Rows => ValveRow.Read(Table).Where(RectifierSupply.IsComplete);

    public static TheoryData<string> Supplies() => [.. Rows.Select(Name)];

    /// <summary>3 %, and 3 V more where the figure was read off a curve to 3 V.</summary>
    [Theory]
    [MemberData(nameof(Supplies))]
    public void GivesWhatTheMakerSays(string name)
    {
        var row = Rows.First(r => Name(r) == name);
        var published = row.Number("dc_volts");
        var allowed = (0.03 * published) + (row["confidence"] == "graph" ? 3 : 0);
        Assert.InRange(RectifierSupply.Volts(row), published - allowed, published + allowed);
    }

    [Fact]
    public void TheTableIsThere() => Assert.True(Rows.Count() > 20);

    private static string Name(ValveRow row) =>
        row.Label("anode_volts_rms", "source_resistance_ohms_per_anode", "first_capacitor_microfarads", "dc_milliamps");
}
