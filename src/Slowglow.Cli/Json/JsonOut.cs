using System.Text.Encodings.Web;
using System.Text.Json;
using Slowglow.Cli.Desk;
using Slowglow.Sheets;

namespace Slowglow.Cli.Json;

/// <summary>Writes an answer as JSON on the output.</summary>
internal static class JsonOut
{
    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new FiniteNumbers() },
    };

    public static void Write<T>(Streams streams, T answer) => streams.Out.WriteLine(JsonSerializer.Serialize(answer, Options));

    /// <summary>What every command answers when a document is wrong: the findings alone.</summary>
    public static void WriteFindings(Streams streams, IEnumerable<DocumentFinding> findings) =>
        Write(streams, new FindingsJson([.. findings.Select(FindingJson.From)]));

    private sealed record FindingsJson(IReadOnlyList<FindingJson> Findings);
}
