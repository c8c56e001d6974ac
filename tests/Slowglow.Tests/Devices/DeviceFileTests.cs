using Slowglow.Sheets.Devices;
using Xunit;

namespace Slowglow.Tests.Devices;

/// <summary>A data file that is wrong is refused, with the device and what is wrong.</summary>
public class DeviceFileTests
{
    private const string Good = """
        {
          "kind": "Diode",
          "pinouts": { "axial": "1:a 2:k" },
          "common": { "pinout": "axial", "law": { "n": 1.9 }, "spread": { "is": 0.3 }, "source": "From the common part." },
          "devices": [
            {
              "type": "1N1", "alsoCalled": ["1N1A"],
              "law": { "is": 1e-9, "rs": 0.1, "bv": 100 },
              "limits": { "volts": 80 },
              "near": { "1N2": { "volts": 60 } },
              "source": "Data sheet."
            }
          ]
        }
        """;

    [Fact]
    public void TakesWhatIsSaidOnceForAll()
    {
        var device = DeviceLibrary.Read("test", Good)[0];
        Assert.Equal(1.9, device["n"]);
        Assert.Equal(0.3, device.Spread["is"]);
        Assert.Equal("Data sheet. From the common part.", device.Source);
        Assert.Equal([new DevicePin("1", 1, "a"), new DevicePin("2", 1, "k")], device.Pinout);
    }

    [Fact]
    public void ANearRelativeHasItsOwnLimits()
    {
        var near = DeviceLibrary.Read("test", Good)[1];
        Assert.Equal("1N2", near.Type);
        Assert.Equal(60, near.Limits["volts"]);
        Assert.Equal(1e-9, near["is"]);
        Assert.Contains("1N1", near.Source, StringComparison.Ordinal);
        Assert.Empty(near.AlsoCalled);
    }

    [Theory]
    [InlineData("\"rs\": 0.1, ", "", "1N1: the constant rs is missing")]
    [InlineData("\"rs\": 0.1", "\"rs\": -1", "1N1: the constant rs cannot be -1")]
    [InlineData("\"rs\": 0.1", "\"rs\": 0.1, \"mu\": 100", "1N1: the law has no constant mu")]
    [InlineData("\"spread\": { \"is\"", "\"spread\": { \"kg1\"", "1N1: spread is given for kg1, which the law does not have")]
    [InlineData("\"is\": 0.3", "\"is\": 30", "1N1: the spread of is must lie between 0 and 1")]
    [InlineData("1:a 2:k", "1:a 1:k", "1N1: pin 1 is given twice")]
    [InlineData("1:a 2:k", "1:a", "1N1: section 1 needs one pin for k")]
    [InlineData("1:a 2:k", "1a 2:k", "'1a' is not a pin: write number:electrode")]
    [InlineData("\"volts\": 80", "\"volts\": 0", "1N1: limit volts must be above zero")]
    [InlineData("\"Diode\"", "\"Dioed\"", "Dioed")]
    [InlineData("\"limits\"", "\"limit\"", "limit")]
    public void SaysWhatIsWrong(string good, string bad, string message)
    {
        var error = Assert.Throws<InvalidDataException>(() =>
            DeviceLibrary.Read("diodes.json", Good.Replace(good, bad, StringComparison.Ordinal))
        );
        Assert.StartsWith("diodes.json: ", error.Message, StringComparison.Ordinal);
        if (!bad.StartsWith("\"Dioed", StringComparison.Ordinal))
        {
            Assert.Contains(message, error.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void ASourceIsNeeded()
    {
        var without = Good.Replace("\"source\": \"From the common part.\"", "\"source\": \"\"", StringComparison.Ordinal)
            .Replace("\"source\": \"Data sheet.\"", "\"source\": \" \"", StringComparison.Ordinal);
        var error = Assert.Throws<InvalidDataException>(() => DeviceLibrary.Read("diodes.json", without));
        Assert.Contains("1N1: the source of the figures is not named", error.Message, StringComparison.Ordinal);
    }

    /// <summary>A screen cannot take more of what the anode turns back than there is.</summary>
    [Theory]
    [InlineData(1.5)]
    [InlineData(0)]
    public void AShareLiesBetweenNothingAndAll(double share)
    {
        var beam = DeviceLibrary.Shipped.Find("6V6GT")!;
        var law = new Dictionary<string, double>(beam.Law) { ["back"] = share };
        Assert.Equal(
            [FormattableString.Invariant($"the constant back cannot be {share}")],
            DeviceCheck.Problems(beam with { Law = law })
        );
    }

    [Fact]
    public void AddedDevicesGoBeforeShippedOnes()
    {
        var mine = DeviceLibrary.Shipped.Find("1N4007")! with { Source = "measured on the bench" };
        Assert.Same(mine, DeviceLibrary.Shipped.With([mine]).Find("1n4007"));
    }
}
