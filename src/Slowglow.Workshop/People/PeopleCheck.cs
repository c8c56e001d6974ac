namespace Slowglow.Workshop.People;

/// <summary>Looks a shop's people over.</summary>
public static class PeopleCheck
{
    public const int ShortestPin = 4;
    public const int LongestPin = 64;
    private const int LongestName = 80;

    public static IEnumerable<Objection> Look(IReadOnlyList<Person> people)
    {
        foreach (var person in people.Where(p => string.IsNullOrWhiteSpace(p.Name) || p.Name.Length > LongestName))
        {
            yield return new($"\"{person.Name}\" is no name.", $"1 to {LongestName} characters.");
        }

        if (people.GroupBy(p => p.Name, StringComparer.OrdinalIgnoreCase).Any(g => g.Count() > 1))
        {
            yield return new("Two people have the same name.", "A name each: it stands in the timelines.");
        }

        if (people.Any(p => p.HasPin) && !people.Any(p => p is { Role: Role.Owner, HasPin: true }))
        {
            yield return new("No owner has a PIN.", "Give an owner one first: nobody could change the settings any more.");
        }
    }

    /// <summary>What keeps it from being a PIN; null when nothing does.</summary>
    public static Objection? LookPin(string pin) =>
        pin.Length is < ShortestPin or > LongestPin
            ? new($"A PIN has {ShortestPin} to {LongestPin} characters.", "Digits, letters, anything; longer is better.")
            : null;
}
