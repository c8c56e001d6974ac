using Slowglow.Sheets;
using Slowglow.Workshop;
using Slowglow.Workshop.Shop;

namespace Slowglow.Bench.Jobs;

/// <summary>Settles the shop's rules. Papers issued before keep theirs.</summary>
public sealed class ChangeRules(SettingsWriter writer)
{
    /// <param name="keepExamples">The change says nothing of rates: example rates stay called so.</param>
    public async Task<IReadOnlyList<Finding>> RunAsync(
        ShopRules rules,
        CancellationToken cancel = default,
        bool keepExamples = false
    )
    {
        var wrong = RulesCheck.Look(rules);
        return wrong.Count > 0
            ? Said.Of(wrong)
            : await writer.WriteAsync(
                (_, settings) =>
                {
                    settings.Rules = rules with { AreExamples = keepExamples && rules.AreExamples };
                    return Task.FromResult<IReadOnlyList<Objection>>([]);
                },
                cancel
            );
    }
}
