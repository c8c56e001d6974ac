using Slowglow.Bench.Questions;
using Slowglow.Cli.Json;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Cli.Desk;

/// <summary>A sheet on the bench with everything said about the documents so far.</summary>
internal sealed class Opened
{
    private readonly Streams streams;
    private readonly bool json;
    private readonly List<DocumentFinding> findings = [];

    private Opened(Streams streams, bool json)
    {
        this.streams = streams;
        this.json = json;
    }

    /// <summary>Null when the sheet has errors.</summary>
    public BenchUnit? Unit { get; private set; }

    /// <summary>The sheet as it was read.</summary>
    public string Text { get; private set; } = "";

    public IReadOnlyList<DocumentFinding> Findings => findings;

    public bool Wrong => Unit is null || findings.Any(f => f.Finding.Severity == Severity.Error);

    public static Opened Sheet(string path, Streams streams, bool json)
    {
        var opened = new Opened(streams, json);
        opened.Text = DocumentFile.Read(path, streams);
        var parsed = BenchUnit.From(opened.Text);
        opened.Unit = parsed.Value;
        opened.Add(path, parsed.Findings);
        return opened;
    }

    public void Add(string document, IEnumerable<Finding> more) =>
        findings.AddRange(more.Select(f => new DocumentFinding(document, f)));

    /// <summary>Setups that have a name: those of a readings document if one is given, otherwise bench and cold.</summary>
    public IReadOnlyList<Setup> KnownSetups(string? readingsPath)
    {
        var none = DiagnoseUnit.NoDocument.Value!.Setups;
        if (readingsPath is null || Unit is null)
        {
            return none;
        }

        var read = ReadingsReader.Read(DocumentFile.Read(readingsPath, streams), Unit.Sheet);
        Add(readingsPath, read.Findings);
        return read.Value?.Setups ?? none;
    }

    /// <summary>The setups asked for; the first known one when none is.</summary>
    public IReadOnlyList<Setup> Chosen(IReadOnlyList<string> words, IReadOnlyList<Setup> known)
    {
        if (words.Count == 0 || Unit is null)
        {
            return [known[0]];
        }

        var nameable = DiagnoseUnit.Nameable(known);
        var read = words.Select(w => SetupWords.Read(w, Unit.Sheet, nameable)).ToArray();
        Add("command line", read.SelectMany(r => r.Findings));
        return [.. read.Select(r => r.Value).OfType<Setup>()];
    }

    /// <summary>Says why the documents cannot be used.</summary>
    public int SayWrong()
    {
        if (json)
        {
            JsonOut.WriteFindings(streams, findings);
        }
        else
        {
            FindingLines.Write(streams.ErrorConsole(), findings, Severity.Warning);
        }
        return ExitCode.DocumentsWrong;
    }

    /// <summary>Says what one should know of documents that can be used.</summary>
    public void SayWarnings() => FindingLines.Write(streams.ErrorConsole(), findings, Severity.Warning);
}
