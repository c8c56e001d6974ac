using Slowglow.Sheets.Devices;
using Xunit;

namespace Slowglow.Tests.Devices;

/// <summary>Bases: valves against tests/reference/valve_pinouts.csv, the rest common practice, no source.</summary>
public class PinoutTests
{
    private static readonly Dictionary<string, string> Electrodes = new()
    {
        ["anode"] = "a",
        ["grid"] = "g",
        ["control grid"] = "g",
        ["screen grid"] = "g2",
        ["cathode"] = "k",
        ["cathode and beam plates"] = "k",
        ["cathode and suppressor grid"] = "k",
        ["heater and cathode (DC output)"] = "k",
        ["heater"] = "h",
    };

    /// <summary>The filament of a 5Y3GT is both heater and cathode; the library takes the DC from pin 8.</summary>
    [Fact]
    public void ValvesHaveTheMakersBases() =>
        Assert.All(
            ValveRow.Read("valve_pinouts.csv").Where(r => Electrodes.ContainsKey(r["electrode"]) && SameBase(r)),
            row =>
                Assert.Equal(
                    Electrodes[row["electrode"]],
                    row.Device.Pinout.SingleOrDefault(p => p.Number == row["pin"])?.Electrode
                )
        );

    /// <summary>Makers number the unit on pins 6 to 8 first; sheets call it the second half, and so does the library.</summary>
    [Theory]
    [InlineData("12AX7", "1", "a", 1)]
    [InlineData("12AX7", "6", "a", 2)]
    [InlineData("6SN7GT", "1", "g", 1)]
    [InlineData("6SN7GT", "5", "a", 2)]
    public void TheHalfOnTheLowPinsIsTheFirst(string type, string pin, string electrode, int section) =>
        Assert.Contains(new DevicePin(pin, section, electrode), DeviceLibrary.Shipped.Find(type)!.Pinout);

    [Theory]
    [InlineData("7805", "in gnd out")]
    [InlineData("7824", "in gnd out")]
    [InlineData("7905", "gnd in out")]
    [InlineData("7924", "gnd in out")]
    [InlineData("LM317", "adj out in")]
    [InlineData("LM337", "adj in out")]
    [InlineData("78L12", "out gnd in")]
    [InlineData("79L12", "gnd in out")]
    [InlineData("2N3904", "e b c")]
    [InlineData("BC547", "c b e")]
    [InlineData("BD139", "e c b")]
    [InlineData("TIP41C", "b c e")]
    [InlineData("2SC945", "e c b")]
    [InlineData("2N7000", "s g d")]
    [InlineData("IRF540", "g d s")]
    [InlineData("2N5457", "d s g")]
    [InlineData("1N4007", "a k")]
    [InlineData("741", "nc in- in+ v- nc out v+ nc")]
    [InlineData("TL072", "out in- in+ v- in+ in- out v+")]
    [InlineData("TL074", "out in- in+ v+ in+ in- out out in- in+ v- in+ in- out")]
    public void PinsRunAsOnThePackage(string type, string electrodes)
    {
        var pins = DeviceLibrary
            .Shipped.Find(type)!
            .Pinout.OrderBy(p => int.Parse(p.Number, System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(electrodes, string.Join(" ", pins.Select(p => p.Electrode)));
    }

    /// <summary>The table's own entry counts, not that of a relative on another base.</summary>
    private static bool SameBase(ValveRow row) => row.Device.Type == row["valve"];
}
