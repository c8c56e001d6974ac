using Slowglow.Bench.Jobs;
using Slowglow.Bench.People;
using Slowglow.Workshop.Shop;

namespace Slowglow.Web.People;

/// <summary>Who works here and who of them is in, for every request and every press of a button: read rarely, asked often.</summary>
public sealed class ShopPeople : IDisposable
{
    /// <summary>Another program on the same database may change people without telling this one.</summary>
    private static readonly TimeSpan Fresh = TimeSpan.FromSeconds(20);
    private readonly ReadSettings settings;
    private readonly SignIn signIn;
    private readonly JobNews news;
    private readonly TimeProvider clock;
    private volatile ShopRules? rules;
    private long readAt;

    public ShopPeople(ReadSettings settings, SignIn signIn, JobNews news, TimeProvider clock)
    {
        (this.settings, this.signIn, this.news, this.clock) = (settings, signIn, news, clock);
        news.SettingsChanged += Forget;
    }

    public void Dispose() => news.SettingsChanged -= Forget;

    public async Task<ShopRules> RulesAsync()
    {
        if (rules is not { } known || clock.GetElapsedTime(Interlocked.Read(ref readAt)) > Fresh)
        {
            rules = known = (await settings.RunAsync()).Rules ?? ExampleRules.Rules;
            Interlocked.Exchange(ref readAt, clock.GetTimestamp());
        }

        return known;
    }

    /// <summary>Name of whoever holds the token; null when nobody does.</summary>
    public async Task<string?> WhoAsync(string? token) => signIn.Who(token, await RulesAsync());

    private void Forget() => rules = null;
}
