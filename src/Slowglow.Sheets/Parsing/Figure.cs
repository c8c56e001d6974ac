namespace Slowglow.Sheets.Parsing;

/// <summary>A figure taken from an entry, with the word it came from.</summary>
/// <param name="Value">Base units; NaN when missing.</param>
internal readonly record struct Figure(double Value, Word Word, bool IsBroken = false)
{
    internal static readonly Figure Missing = new(double.NaN, default);

    /// <summary>Something was there, was wrong, and has been reported.</summary>
    internal static readonly Figure Broken = new(double.NaN, default, true);

    internal bool IsGiven => !double.IsNaN(Value);
}
