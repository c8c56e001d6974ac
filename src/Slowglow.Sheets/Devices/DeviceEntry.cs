namespace Slowglow.Sheets.Devices;

/// <summary>One device of a data file as written; what it leaves out comes from the file's common part.</summary>
internal sealed record DeviceEntry
{
    private static readonly Dictionary<string, double> None = [];

    public string Type { get; init; } = "";

    public IReadOnlyList<string> AlsoCalled { get; init; } = [];

    /// <summary>Name of one of the file's pinouts, or a pinout written out.</summary>
    public string? Pinout { get; init; }

    public IReadOnlyDictionary<string, double> Law { get; init; } = None;

    public IReadOnlyDictionary<string, double> Spread { get; init; } = None;

    public IReadOnlyDictionary<string, double> Limits { get; init; } = None;

    public string Source { get; init; } = "";

    /// <summary>Other types whose law is near enough the same, each with limits of its own (none known: empty).</summary>
    public IReadOnlyDictionary<string, IReadOnlyDictionary<string, double>> Near { get; init; } =
        new Dictionary<string, IReadOnlyDictionary<string, double>>();
}
