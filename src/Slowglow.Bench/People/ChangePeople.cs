using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Workshop.People;
using Slowglow.Workshop.Shop;

namespace Slowglow.Bench.People;

/// <summary>Settles who works here, with their roles and PINs.</summary>
public sealed class ChangePeople(ReadSettings settings, ChangeRules change)
{
    /// <param name="people">Name, role, and a new PIN: null keeps the one there is, empty takes it away.</param>
    public async Task<IReadOnlyList<Finding>> RunAsync(
        IReadOnlyList<(string Name, Role Role, string? Pin)> people,
        CancellationToken cancel = default
    )
    {
        if (
            people
                .Select(p => p.Pin)
                .Where(p => p is { Length: > 0 })
                .Select(p => PeopleCheck.LookPin(p!))
                .FirstOrDefault(o => o is not null) is
            { } wrong
        )
        {
            return Said.Of([wrong]);
        }

        var rules = (await settings.RunAsync(cancel)).Rules ?? ExampleRules.Rules;
        var known = rules.People.ToLookup(p => p.Name);
        List<Person> all = [];
        foreach (var (name, role, pin) in people)
        {
            var stored = pin switch
            {
                null => known[name].FirstOrDefault()?.Pin ?? "",
                "" => "",
                _ => await Task.Run(() => PinHash.Of(pin), cancel),
            };
            all.Add(new(name.Trim(), role, stored));
        }

        return await change.RunAsync(rules with { People = all }, cancel, keepExamples: true);
    }
}
