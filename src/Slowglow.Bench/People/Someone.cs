using Slowglow.Workshop;
using Slowglow.Workshop.People;
using Slowglow.Workshop.Shop;

namespace Slowglow.Bench.People;

/// <summary>
/// Who does what is being done. Whoever takes a request in says it once (<see cref="Name"/>), and it follows the work from there; where no PINs are
/// asked for it may stay empty.
/// </summary>
public static class Someone
{
    private static readonly AsyncLocal<string?> Working = new();

    /// <summary>Null when nobody is signed in.</summary>
    public static string? Name
    {
        get => Working.Value;
        set => Working.Value = value;
    }

    /// <summary>Why whoever works may not; null when they may. Where no PIN is asked for everybody may everything.</summary>
    /// <param name="right">Null: anybody who is signed in.</param>
    public static Objection? Refuses(ShopRules rules, Right? right)
    {
        if (!rules.AsksForPin)
        {
            return null;
        }

        if (rules.People.FirstOrDefault(p => p.Name == Name) is not { } person)
        {
            return new("Nobody is signed in here any more.", "Sign in again; copy what you typed first.");
        }

        return right is { } needed && !Rights.May(person.Role, needed)
            ? new($"{person.Name} ({Rights.Say(person.Role)}) may not {Rights.Say(needed)}.", $"Ask: {Rights.Holders(needed)}.")
            : null;
    }
}
