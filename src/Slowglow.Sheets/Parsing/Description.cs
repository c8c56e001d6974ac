using Slowglow.Quantities;

namespace Slowglow.Sheets.Parsing;

/// <summary>What one would call a part when ordering it.</summary>
internal static class Description
{
    internal static string Of(params ReadOnlySpan<string?> pieces)
    {
        var words = new List<string>();
        foreach (var piece in pieces)
        {
            if (!string.IsNullOrEmpty(piece))
            {
                words.Add(piece);
            }
        }

        return string.Join(" ", words);
    }

    /// <summary>"1 W", or null when not given.</summary>
    internal static string? Rating(double value, string unit) => double.IsNaN(value) ? null : Engineering.Format(value, unit);
}
