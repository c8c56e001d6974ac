using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;
using Slowglow.Bench.Jobs;
using Slowglow.Storage;
using Slowglow.Storage.Sqlite;
using Slowglow.Workshop.Words;

namespace Slowglow.Browser.Tests.Pieces;

/// <summary>Draws one piece of the page without a browser.</summary>
internal static class Drawn
{
    public static async Task<string> AsHtmlAsync<T>(Dictionary<string, object?> parameters, TradeWords words = TradeWords.Valve)
        where T : IComponent
    {
        await using var services = new ServiceCollection()
            .AddSingleton(TimeProvider.System)
            .AddSingleton<IDbContextFactory<ShopDatabase>>(new SqliteShop("never opened"))
            .AddSingleton<BenchUnits>()
            .AddSingleton<JobNews>()
            .AddSingleton<JobLedger>()
            .AddSingleton<TimelineWriter>()
            .AddSingleton<OpenJob>()
            .AddSingleton<WithdrawReading>()
            .BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, NullLoggerFactory.Instance);
        RenderFragment piece = builder =>
        {
            builder.OpenComponent<T>(0);
            builder.AddMultipleAttributes(1, parameters!);
            builder.CloseComponent();
        };
        return await renderer.Dispatcher.InvokeAsync(async () =>
        {
            var frame = ParameterView.FromDictionary(
                new Dictionary<string, object?> { ["Value"] = words, ["ChildContent"] = piece }
            );
            return (await renderer.RenderComponentAsync<CascadingValue<TradeWords>>(frame)).ToHtmlString();
        });
    }
}
