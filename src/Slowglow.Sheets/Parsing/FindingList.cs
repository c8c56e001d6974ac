namespace Slowglow.Sheets;

/// <summary>Collects findings while a document is read.</summary>
internal sealed class FindingList
{
    private const int Most = 500;
    private readonly List<Finding> all = [];

    internal void Error(Place place, string text, string remedy = "", string? subject = null) =>
        Add(new Finding(Severity.Error, place, text, remedy, subject));

    internal void Warning(Place place, string text, string remedy = "", string? subject = null) =>
        Add(new Finding(Severity.Warning, place, text, remedy, subject));

    internal void Note(Place place, string text, string remedy = "", string? subject = null) =>
        Add(new Finding(Severity.Note, place, text, remedy, subject));

    internal void Add(Finding finding)
    {
        if (all.Count < Most && !all.Contains(finding))
        {
            all.Add(finding);
        }
    }

    /// <summary>All of them, in document order.</summary>
    internal IReadOnlyList<Finding> InOrder() => [.. all.OrderBy(f => f.Place.Line).ThenBy(f => f.Place.Column)];
}
