using Slowglow.Circuits;
using Slowglow.Sheets;

namespace Slowglow.Bench.Questions;

/// <summary>Reads a sheet, checks its circuit, and says everything there is to say about both.</summary>
public sealed class CheckSheet
{
    /// <summary>Never throws on bad text.</summary>
    public SheetCheck Run(string sheetText)
    {
        var sheet = SheetReader.Read(sheetText);
        if (sheet.Value is not { } read)
        {
            return new(null, null, 0, 0, [], 0, [], sheet.Findings);
        }

        var circuit = Circuit.From(read);
        return new(
            read.Unit,
            read.Maker,
            read.Parts.Count,
            read.Nets.Names.Count,
            [.. read.Signals.Select(s => s.Name)],
            circuit.Value?.Faults.Count ?? 0,
            read.Assumptions,
            [.. sheet.Findings, .. circuit.Findings]
        );
    }
}
