namespace Slowglow.Sheets.Editing;

/// <summary>Writes a scalar plainly where YAML lets it stand, quoted where it does not.</summary>
internal static class ScalarText
{
    internal static string Quote(string value, bool inFlow)
    {
        var plain =
            value.Length > 0
            && value.Trim() == value
            && "-?:,[]{}#&*!|>'\"%@`".IndexOf(value[0], StringComparison.Ordinal) < 0
            && !value.Contains(": ", StringComparison.Ordinal)
            && !value.Contains(" #", StringComparison.Ordinal)
            && !value.EndsWith(':')
            && !value.Any(char.IsControl)
            && !(inFlow && value.AsSpan().IndexOfAny(",[]{}") >= 0);
        return plain ? value : $"'{value.Replace("'", "''", StringComparison.Ordinal)}'";
    }
}
