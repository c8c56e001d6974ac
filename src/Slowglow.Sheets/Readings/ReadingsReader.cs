using Slowglow.Sheets.Parsing;
using Slowglow.Sheets.Setups;
using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Readings;

/// <summary>Reads readings documents and single reading lines against a sheet.</summary>
public static class ReadingsReader
{
    /// <summary>Reads a whole document. Never throws on bad text: everything comes back as findings.</summary>
    public static Parsed<ReadingsDocument> Read(string text, Sheet sheet)
    {
        var findings = new FindingList();
        var root = YamlDocumentReader.Read(text, findings);
        var document = root is null ? null : new ReadingsReading(sheet, findings).Run(new Keys(root, "the readings", findings));
        return new Parsed<ReadingsDocument>(document, findings.InOrder());
    }

    /// <summary>Reads one line such as <c>V1.6 = 62 V on slow</c>; the first setup is the default. A line that names several places gives the first, with the rest behind it.</summary>
    public static Parsed<Reading> ReadLine(string line, Sheet sheet, IReadOnlyList<Setup> setups)
    {
        var findings = new FindingList();
        var reading = new ReadingLine(sheet, setups, findings).Read(OneLine(line));
        return new Parsed<Reading>(reading, findings.InOrder());
    }

    /// <summary>Reads the WHERE [KIND] part alone: <c>V1.6</c>, <c>HT1 ripple</c>, <c>OUT 1kHz</c>.</summary>
    public static Parsed<Probe> ReadProbe(string text, Sheet sheet)
    {
        var findings = new FindingList();
        var probe = new ReadingLine(sheet, [], findings).ReadProbe(OneLine(text));
        return new Parsed<Probe>(probe, findings.InOrder());
    }

    private static YamlScalar OneLine(string text)
    {
        var bare = text.AsSpan().TrimStart();
        return new YamlScalar(bare.TrimEnd().ToString(), new Place(1, 1 + text.Length - bare.Length), true);
    }
}
