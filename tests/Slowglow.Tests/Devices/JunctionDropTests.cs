using Slowglow.Sheets.Devices;
using Xunit;

namespace Slowglow.Tests.Devices;

/// <summary>What a meter's diode range would show. Common practice, no source.</summary>
public class JunctionDropTests
{
    private const double ThermalVolts = 0.02585;

    [Theory]
    [InlineData("1N4007", 0.50, 0.65)]
    [InlineData("1N4148", 0.55, 0.68)]
    [InlineData("1N5408", 0.45, 0.62)]
    [InlineData("UF4007", 0.45, 0.68)]
    [InlineData("1N5819", 0.10, 0.25)]
    [InlineData("BAT85", 0.20, 0.36)]
    [InlineData("1N34A", 0.18, 0.35)]
    [InlineData("OA90", 0.18, 0.35)]
    [InlineData("1N4742A", 0.55, 0.75)]
    [InlineData("LED red", 1.5, 1.9)]
    [InlineData("LED green", 1.8, 2.2)]
    [InlineData("LED blue", 2.5, 3.0)]
    public void ADiodeDropsWhatTheMeterShows(string type, double low, double high) =>
        Assert.InRange(Forward(DeviceLibrary.Shipped.Find(type)!, 1e-3), low, high);

    [Theory]
    [InlineData("2N3904", 1e-3, 0.6, 0.7)]
    [InlineData("BC547", 2e-3, 0.58, 0.7)]
    [InlineData("2N3055", 0.5, 0.55, 0.75)]
    [InlineData("BD139", 0.15, 0.6, 0.75)]
    [InlineData("AC128", 10e-3, 0.15, 0.3)]
    public void ABaseStandsOverItsEmitter(string type, double collector, double low, double high)
    {
        var device = DeviceLibrary.Shipped.Find(type)!;
        Assert.InRange(ThermalVolts * Math.Log(collector / device["is"]), low, high);
    }

    [Fact]
    public void ZenersAreCalledByTheirVolts()
    {
        Assert.Equal(12, DeviceLibrary.Shipped.Find("1N4742A")!["bv"]);
        Assert.Equal(5.6, DeviceLibrary.Shipped.Find("BZX55C5V6")!["bv"]);
        Assert.Equal(15, DeviceLibrary.Shipped.Find("BZX79-C15")!["bv"]);
        Assert.Equal(5.1, DeviceLibrary.Shipped.Find("1N5231B")!["bv"]);
    }

    [Fact]
    public void EveryPlainSiliconJunctionIsInReach() =>
        Assert.All(
            DeviceLibrary.Shipped.All.Where(d => d.Kind is DeviceKind.Diode or DeviceKind.Zener or DeviceKind.Led),
            d => Assert.InRange(Forward(d, 1e-3), 0.1, 3.2)
        );

    /// <summary>I = is (e^((V - I rs)/(n Vt)) - 1) turned round.</summary>
    private static double Forward(Device diode, double amps) =>
        (diode["n"] * ThermalVolts * Math.Log(1 + (amps / diode["is"]))) + (amps * diode["rs"]);
}
