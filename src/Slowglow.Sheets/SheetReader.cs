namespace Slowglow.Sheets;

/// <summary>Reads circuit sheets.</summary>
public static class SheetReader
{
    /// <summary>Reads a sheet document. Never throws on bad text: everything comes back as findings.</summary>
    public static Parsed<Sheet> Read(string text) => throw new NotSupportedException(text);
}
