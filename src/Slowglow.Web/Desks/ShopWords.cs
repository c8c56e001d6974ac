using Slowglow.Bench.Jobs;
using Slowglow.Workshop.Words;

namespace Slowglow.Web.Desks;

/// <summary>The words of the trade that the shop has chosen, for every page.</summary>
public sealed class ShopWords : IDisposable
{
    private readonly ReadSettings settings;
    private readonly JobNews news;
    private TradeWords? words;

    public ShopWords(ReadSettings settings, JobNews news)
    {
        this.settings = settings;
        this.news = news;
        news.SettingsChanged += Forget;
    }

    public async Task<TradeWords> ChosenAsync() => words ??= (await settings.RunAsync()).Words;

    public void Dispose() => news.SettingsChanged -= Forget;

    private void Forget() => words = null;
}
