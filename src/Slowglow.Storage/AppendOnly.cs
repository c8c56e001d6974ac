namespace Slowglow.Storage;

/// <summary>Tables whose rows are never changed or removed; triggers in every database see to it.</summary>
public static class AppendOnly
{
    public static IReadOnlyList<string> Tables { get; } = ["timeline", "papers", "photos", "stock_moves"];
}
