using Slowglow.Sheets.Devices;
using Xunit;

namespace Slowglow.Tests.Devices;

/// <summary>Type numbers are found however the trade writes them. Common practice, no source.</summary>
public class TypeNumberTests
{
    private static readonly DeviceLibrary Library = DeviceLibrary.Shipped;

    [Theory]
    [InlineData("12ax7", "12AX7")]
    [InlineData("ECC83", "12AX7")]
    [InlineData("7025", "12AX7")]
    [InlineData("12AX7/ECC83", "12AX7")]
    [InlineData("6SN7/B65", "6SN7GT")]
    [InlineData("ECC 82", "12AU7")]
    [InlineData("6V6-GT", "6V6GT")]
    [InlineData("6BQ5", "EL84")]
    [InlineData("5AR4", "GZ34")]
    [InlineData("6CA4", "EZ81")]
    [InlineData("L7815", "7815")]
    [InlineData("LM7815", "7815")]
    [InlineData("LM7815CT", "7815")]
    [InlineData("L7815CV", "7815")]
    [InlineData("uA7905C", "7905")]
    [InlineData("LM78L05ACZ", "78L05")]
    [InlineData("LM317T", "LM317")]
    [InlineData("TL072CP", "TL072")]
    [InlineData("TL 074 CN", "TL074")]
    [InlineData("NE5532P", "NE5532")]
    [InlineData("JRC4558D", "4558")]
    [InlineData("RC4558P", "4558")]
    [InlineData("UA741CP", "741")]
    [InlineData("MC1458P", "1458")]
    [InlineData("1N914", "1N4148")]
    [InlineData("BD139-16", "BD139")]
    [InlineData("C945", "2SC945")]
    [InlineData("D669", "2SD669")]
    [InlineData("K170", "2SK170")]
    [InlineData("red LED", "LED red")]
    public void IsFoundAsWritten(string written, string type) => Assert.Equal(type, Library.Find(written)?.Type);

    /// <summary>Numbers that look like abbreviations and are not.</summary>
    [Theory]
    [InlineData("J111")]
    [InlineData("J175")]
    [InlineData("J201")]
    public void KeepsNumbersOfTheirOwn(string type) => Assert.Equal(type, Library.Find(type)?.Type);

    [Theory]
    [InlineData("12AX77")]
    [InlineData("")]
    [InlineData("/")]
    [InlineData("1N9999")]
    public void UnknownIsNull(string written) => Assert.Null(Library.Find(written));

    [Theory]
    [InlineData("12AX8", "12AX7")]
    [InlineData("12XA7", "12AX7")]
    [InlineData("ECC38", "ECC83")]
    [InlineData("1N4O07", "1N4007")]
    [InlineData("IN4148", "1N4148")]
    [InlineData("2N3940", "2N3904")]
    [InlineData("TL072XYZ", "TL072")]
    [InlineData("EL 84 M2", "EL84M")]
    [InlineData("BC547D", "BC547")]
    [InlineData("L7815XX", "L7815")]
    public void NearestComesFirst(string written, string nearest) => Assert.Equal(nearest, Library.Nearest(written)[0]);

    [Fact]
    public void NearestGivesAsManyAsAsked() => Assert.Equal(5, Library.Nearest("ECC84", 5).Distinct().Count());

    /// <summary>A wrong last digit: the neighbours come before the rest, each under the name it was asked by.</summary>
    [Fact]
    public void NeighboursComeFirst() => Assert.Equal(["ECC83", "ECC85", "ECC81"], Library.Nearest("ECC84"));

    [Fact]
    public void OneDeviceIsOfferedOnce()
    {
        var types = Library.Nearest("ECC83X", 4).Select(n => Library.Find(n)!.Type).ToList();
        Assert.Equal(types.Distinct(), types);
    }
}
