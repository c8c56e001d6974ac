namespace Slowglow.Sheets;

/// <summary>Where in a document something stands. Line and column count from 1; 0 means "no place".</summary>
public readonly record struct Place(int Line, int Column)
{
    /// <summary>For things that stand in no document.</summary>
    public static readonly Place None = default;

    /// <inheritdoc/>
    public override string ToString() => Line == 0 ? "" : $"line {Line}, column {Column}";
}
