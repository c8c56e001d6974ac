using System.Collections.Concurrent;
using System.Security.Cryptography;
using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Workshop.People;
using Slowglow.Workshop.Shop;

namespace Slowglow.Bench.People;

/// <summary>Lets people in by their PIN. Who is in is kept in memory: a program started anew asks again.</summary>
public sealed class SignIn(ReadSettings settings, TimeProvider clock)
{
    private const int Tries = 5;
    private static readonly TimeSpan Pause = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan Longest = TimeSpan.FromHours(14);
    private readonly ConcurrentDictionary<string, (string Name, DateTimeOffset Until)> inside = new();
    private readonly ConcurrentDictionary<string, (int Wrong, DateTimeOffset Since)> wrongs = new();

    /// <summary>A token that stands for the person from now on; findings when the PIN is not theirs.</summary>
    public async Task<Parsed<string>> RunAsync(string name, string pin, CancellationToken cancel = default)
    {
        var now = clock.GetUtcNow();
        var (wrong, since) = wrongs.GetValueOrDefault(name);
        if (wrong >= Tries && now - since < Pause)
        {
            return new(null, Said.Wrong("Too many wrong PINs.", "Wait a minute."));
        }

        var rules = (await settings.RunAsync(cancel)).Rules ?? ExampleRules.Rules;
        var person = rules.People.FirstOrDefault(p => p.Name == name && p.HasPin);
        if (person is null || !await Task.Run(() => PinHash.Fits(pin, person.Pin), cancel))
        {
            wrongs[person?.Name ?? ""] = (now - since < Pause ? wrong + 1 : 1, now);
            return new(null, Said.Wrong("That is not the PIN.", "Try again; an owner can set a new one in the settings."));
        }

        wrongs.TryRemove(name, out _);
        var token = Convert.ToHexString(RandomNumberGenerator.GetBytes(32));
        inside[token] = (name, now + Longest);
        return new(token, []);
    }

    /// <summary>Name of whoever holds the token; null when it does not stand for anybody, or for nobody who still works here with a PIN.</summary>
    public string? Who(string? token, ShopRules rules) =>
        token is not null
        && inside.TryGetValue(token, out var held)
        && held.Until > clock.GetUtcNow()
        && rules.People.Any(p => p.Name == held.Name && p.HasPin)
            ? held.Name
            : null;

    public void Leave(string token) => inside.TryRemove(token, out _);
}
