using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Labour;
using Slowglow.Workshop.Pricing;
using Slowglow.Workshop.Shop;

namespace Slowglow.Workshop.Papers;

/// <summary>Lines to begin an invoice with; the technician looks them over.</summary>
public static class Proposal
{
    /// <summary>As agreed where an option was accepted; otherwise by what was done: hours by the shop's rule, parts fitted; the bench fee where nothing was.</summary>
    public static IReadOnlyList<ChargeLine> For(JobDealings dealings, ShopRules rules)
    {
        if (dealings.Accepted is { } accepted)
        {
            return [.. accepted.Priced.Lines.Select(l => l.Line)];
        }

        var worked = Worked(dealings, rules);
        return worked.Count > 0 ? worked
            : dealings.Notes?.BenchFee is { Figure: > 0 } fee ? [new(LineKind.Fee, "Bench fee", 1, fee.Figure, rules.UsualTax)]
            : [];
    }

    /// <summary>What was done, whatever was agreed.</summary>
    public static IReadOnlyList<ChargeLine> Worked(JobDealings dealings, ShopRules rules)
    {
        var labour = dealings
            .Hours.GroupBy(h => h.Rate)
            .Select(g => new ChargeLine(
                LineKind.Labour,
                $"Labour, {g.Key}",
                HoursRule.Hours(rules.Hours.Charge(g.Sum(h => h.Minutes))),
                rules.Labour.FirstOrDefault(l => l.Name == g.Key)?.PerHour ?? 0,
                rules.UsualTax
            ));
        var parts = dealings.Fitted.Select(f => new ChargeLine(LineKind.Part, f.Part, f.Quantity, f.PriceEach, rules.UsualTax));
        return [.. labour, .. parts];
    }
}
