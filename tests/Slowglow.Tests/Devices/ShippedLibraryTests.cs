using Slowglow.Sheets.Devices;
using Xunit;

namespace Slowglow.Tests.Devices;

public class ShippedLibraryTests
{
    private static readonly DeviceLibrary Library = DeviceLibrary.Shipped;

    [Fact]
    public void EveryDeviceIsWhole() =>
        Assert.Empty(Library.All.SelectMany(d => DeviceCheck.Problems(d).Select(p => $"{d.Type}: {p}")));

    [Fact]
    public void HoldsTheNumbersOfTheTrade() => Assert.True(Library.All.Count >= 120);

    [Fact]
    public void EveryKindIsThere() =>
        Assert.Empty(Enum.GetValues<DeviceKind>().Except(Library.All.Select(d => d.Kind)));

    [Fact]
    public void EveryNameLeadsToItsDevice() =>
        Assert.Empty(Library.All.Where(d => !ReferenceEquals(Library.Find(d.Type), d)).Select(d => d.Type));
}
