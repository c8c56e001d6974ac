using Slowglow.Circuits;
using Slowglow.Diagnosis;
using Slowglow.Sheets;

namespace Slowglow.Bench.Questions;

/// <summary>A unit on the bench: its sheet, circuit and everything solved of it so far. Keep one per sheet text: it caches.</summary>
public sealed class BenchUnit
{
    private BenchUnit(Sheet sheet, Circuit circuit, IReadOnlyList<Finding> findings)
    {
        Sheet = sheet;
        Circuit = circuit;
        Findings = findings;
        Worlds = new Worlds(circuit);
        Diagnostician = new Diagnostician(Worlds);
    }

    public Sheet Sheet { get; }
    public Circuit Circuit { get; }
    public Worlds Worlds { get; }
    public Diagnostician Diagnostician { get; }

    /// <summary>Notes and warnings of sheet and circuit.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Reads and checks a sheet. Value is null when it has errors; findings of sheet and circuit come together.</summary>
    public static Parsed<BenchUnit> From(string sheetText)
    {
        var sheet = SheetReader.Read(sheetText);
        if (sheet.Value is null)
        {
            return new(null, sheet.Findings);
        }

        var circuit = Circuit.From(sheet.Value);
        IReadOnlyList<Finding> all = [.. sheet.Findings, .. circuit.Findings];
        var usable = circuit.Value is not null && !all.Any(f => f.Severity == Severity.Error);
        return new(usable ? new BenchUnit(sheet.Value, circuit.Value!, all) : null, all);
    }
}
