namespace Slowglow.Sheets;

/// <summary>What reading a document gave: the thing itself when it is usable, and everything there is to say about it.</summary>
/// <param name="Value">Null when an error leaves nothing to work with.</param>
/// <param name="Findings">All of them, in document order.</param>
public sealed record Parsed<T>(T? Value, IReadOnlyList<Finding> Findings)
    where T : class
{
    public bool HasErrors => Findings.Any(f => f.Severity == Severity.Error);
}
