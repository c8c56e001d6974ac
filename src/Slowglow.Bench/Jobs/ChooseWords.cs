using Slowglow.Sheets;
using Slowglow.Workshop;
using Slowglow.Workshop.Words;

namespace Slowglow.Bench.Jobs;

/// <summary>Settles which words of the trade the shop uses.</summary>
public sealed class ChooseWords(SettingsWriter writer)
{
    public Task<IReadOnlyList<Finding>> RunAsync(TradeWords words, CancellationToken cancel = default) =>
        writer.WriteAsync(
            (_, settings) =>
            {
                settings.Words = words;
                return Task.FromResult<IReadOnlyList<Objection>>([]);
            },
            cancel
        );
}
