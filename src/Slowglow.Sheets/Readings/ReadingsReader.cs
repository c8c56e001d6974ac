using Slowglow.Sheets.Setups;

namespace Slowglow.Sheets.Readings;

/// <summary>Reads readings documents and single reading lines against a sheet.</summary>
public static class ReadingsReader
{
    /// <summary>Reads a whole document.</summary>
    public static Parsed<ReadingsDocument> Read(string text, Sheet sheet) => throw new NotSupportedException(text);

    /// <summary>Reads one line such as <c>V1.6 = 62 V on slow</c>; the first setup is the default.</summary>
    public static Parsed<Reading> ReadLine(string line, Sheet sheet, IReadOnlyList<Setup> setups) =>
        throw new NotSupportedException(line);

    /// <summary>Reads the WHERE [KIND] part alone: <c>V1.6</c>, <c>HT1 ripple</c>, <c>OUT 1kHz</c>.</summary>
    public static Parsed<Probe> ReadProbe(string text, Sheet sheet) => throw new NotSupportedException(text);
}
