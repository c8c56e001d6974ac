namespace Slowglow.Web.Hosting;

/// <summary>A file's name for a sheet: "Harrow, Tern 2" becomes "harrow-tern-2".</summary>
internal static class SheetFileName
{
    public static string Of(string unit)
    {
        var plain = string.Concat(unit.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : ' '));
        var words = plain.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words.Length == 0 ? "sheet" : string.Join('-', words);
    }
}
