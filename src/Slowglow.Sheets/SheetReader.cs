using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parsing;

namespace Slowglow.Sheets;

/// <summary>Reads circuit sheets.</summary>
public static class SheetReader
{
    /// <summary>Reads a sheet document with the shipped device library. Never throws on bad text: everything comes back as findings.</summary>
    public static Parsed<Sheet> Read(string text)
    {
        DeviceLibrary.BeginToRead();
        return new SheetReading(text, () => DeviceLibrary.Shipped).Run();
    }

    /// <summary>Reads a sheet document with a device library of one's own.</summary>
    public static Parsed<Sheet> Read(string text, DeviceLibrary devices) => new SheetReading(text, () => devices).Run();
}
