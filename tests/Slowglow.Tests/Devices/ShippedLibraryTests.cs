using Slowglow.Sheets.Devices;
using Xunit;

namespace Slowglow.Tests.Devices;

/// <summary>The shipped data files hold together.</summary>
public class ShippedLibraryTests
{
    private static readonly DeviceLibrary Library = DeviceLibrary.Shipped;

    [Fact]
    public void EveryDeviceIsWhole() =>
        Assert.Empty(Library.All.SelectMany(d => DeviceCheck.Problems(d).Select(p => $"{d.Type}: {p}")));

    [Fact]
    public void HoldsTheNumbersOfTheTrade() => Assert.True(Library.All.Count >= 120);

    [Fact]
    public void EveryKindIsThere() => Assert.Empty(Enum.GetValues<DeviceKind>().Except(Library.All.Select(d => d.Kind)));

    [Fact]
    public void EveryTypeLeadsToItsDevice() =>
        Assert.Empty(Library.All.Where(d => !ReferenceEquals(Library.Find(d.Type), d)).Select(d => d.Type));

    [Fact]
    public void NoOtherNumberBelongsToTwoDevices() =>
        Assert.Empty(
            Library.All.SelectMany(d =>
                d.AlsoCalled.Where(n => !ReferenceEquals(Library.Find(n), d)).Select(n => $"{n} of {d.Type}")
            )
        );

    [Fact]
    public void EveryDeviceScatters() => Assert.Empty(Library.All.Where(d => d.Spread.Count == 0).Select(d => d.Type));

    [Fact]
    public void EverySectionOfATwinHasTheSameElectrodes() =>
        Assert.All(
            Library.All,
            device =>
                Assert.Single(
                    device
                        .Pinout.Where(p => p.Section > 0)
                        .GroupBy(p => p.Section)
                        .Select(s => string.Join(" ", s.Select(p => p.Electrode).Order(StringComparer.Ordinal)))
                        .Distinct()
                )
        );

    [Fact]
    public void OpAmpsHaveAsManySectionsAsTheySay() =>
        Assert.All(
            Library.All.Where(d => d.Kind == DeviceKind.OpAmp),
            d => Assert.Equal(d["sections"], d.Pinout.Max(p => p.Section))
        );
}
