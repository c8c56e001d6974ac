using Slowglow.Bench.Jobs.History;
using Slowglow.Diagnosis;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>Ranks suspects from a complaint, a readings document and single reading lines.</summary>
public sealed class DiagnoseUnit(BenchUnit unit)
{
    /// <summary>Result is null when anything handed over is wrong; the findings then say what.</summary>
    public DiagnosedUnit Run(DiagnoseRequest request, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        var document = request.ReadingsText is { } text ? ReadingsReader.Read(text, unit.Sheet) : NoDocument;
        List<Finding> lineFindings = [];
        var setups = document.Value?.Setups ?? NoDocument.Value!.Setups;
        var lineSetups = Nameable(setups);
        if (request.Setup is { } words)
        {
            var setup = SetupWords.Read(words, unit.Sheet, lineSetups);
            lineFindings.AddRange(setup.Findings);
            lineSetups = setup.Value is { } chosen ? [chosen, .. lineSetups.Where(s => s.Name != chosen.Name)] : lineSetups;
        }

        var lines = request.Lines.Select(l => ReadLine(l, lineSetups)).ToArray();
        lineFindings.AddRange(lines.SelectMany(l => l.Findings));
        var history = request.HistoryText is { } past ? HistoryText.Read(past, unit.Circuit) : new(null, []);
        if (
            document.Value is not { } read
            || document.HasErrors
            || lineFindings.Concat(history.Findings).Any(f => f.Severity == Severity.Error)
        )
        {
            return new(null, setups, document.Findings, lineFindings) { HistoryFindings = history.Findings };
        }

        var readings = read.Readings.Concat(lines.Select(l => l.Value).OfType<Reading>());
        var evidence = new Evidence(JoinComplaints(read.Complaint, request.Complaint), Offered(setups, lineSetups), [.. readings])
        {
            Past = history.Value,
            AgeYears = request.AgeYears,
        };
        var result = unit.Diagnostician.Diagnose(evidence, progress, cancel);
        return new(result, setups, document.Findings, lineFindings);
    }

    /// <summary>What stands for a readings document where there is none: the unit as it stands, and with the power off.</summary>
    public static Parsed<ReadingsDocument> NoDocument { get; } = new(new(null, [Setup.Default, Setup.Cold], []), []);

    /// <summary>Setups a line may name: those of the document, and always the unit with the power off.</summary>
    public static IReadOnlyList<Setup> Nameable(IReadOnlyList<Setup> setups) =>
        setups.Any(s => s.Name == Setup.Cold.Name) ? setups : [.. setups, Setup.Cold];

    /// <summary>A cold reading is nearly always possible and harmless, so it is on offer even where the document does not name it.</summary>
    private static IReadOnlyList<Setup> Offered(IReadOnlyList<Setup> setups, IReadOnlyList<Setup> lineSetups)
    {
        var chosen = lineSetups.Where(s => s.Name != Setup.Cold.Name && !setups.Contains(s));
        IEnumerable<Setup> cold = setups.Any(s => s.PowerOff) ? [] : [Setup.Cold];
        return [.. setups, .. chosen, .. cold];
    }

    private Parsed<Reading> ReadLine(string line, IReadOnlyList<Setup> setups)
    {
        var parsed = ReadingsReader.ReadLine(line, unit.Sheet, setups);
        Finding[] findings =
        [
            .. parsed.Findings.Select(f => f with { Place = Place.None, Text = $"reading \"{line.Trim()}\": {f.Text}" }),
        ];
        return new(parsed.Value, findings);
    }

    private static string? JoinComplaints(string? first, string? second) =>
        (string.IsNullOrWhiteSpace(first), string.IsNullOrWhiteSpace(second)) switch
        {
            (false, false) => $"{first!.TrimEnd().TrimEnd('.')}. {second!.Trim()}",
            (false, true) => first,
            (true, false) => second,
            _ => null,
        };
}
