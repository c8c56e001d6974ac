using Slowglow.Workshop.Money;

namespace Slowglow.Workshop.Papers;

/// <summary>What to tell the customer about a quote before it is agreed.</summary>
public static class QuoteAdvice
{
    /// <summary>Warnings, one a sentence; empty when there is nothing to warn of.</summary>
    /// <param name="limit">"Call me above"; null when none was set.</param>
    /// <param name="worth">What the owner says the unit is worth; null when not said.</param>
    /// <param name="worthPercent">A repair above this share of the worth is called not worth it; 0 to 100.</param>
    public static IEnumerable<string> On(Quote quote, Amount? limit, Amount? worth, decimal worthPercent)
    {
        foreach (var option in quote.Options)
        {
            var total = option.Priced.Total;
            if (Passes(total, limit))
            {
                yield return $"\"{option.Name}\" comes to {total}, above the limit of {limit}: the customer has to be asked.";
            }

            if (IsNotWorthIt(total, worth, worthPercent))
            {
                yield return $"\"{option.Name}\" comes to {total}, and the unit is said to be worth {worth}: "
                    + "it may not be worth repairing, and the customer ought to hear that.";
            }
        }

        if (quote.Options.FirstOrDefault()?.Priced.Total.Currency is { } currency)
        {
            foreach (var (what, other) in new[] { ("limit", limit), ("worth", worth) })
            {
                if (other is not null && other.Currency != currency)
                {
                    yield return $"The {what} of {other} is in another currency than this quote ({currency}): compare them yourself.";
                }
            }
        }
    }

    /// <summary>True when the total is above the limit; never across currencies.</summary>
    public static bool Passes(Amount total, Amount? limit) =>
        limit is not null && limit.Currency == total.Currency && total.Figure > limit.Figure;

    /// <summary>True when the total takes more than that share of the stated worth.</summary>
    public static bool IsNotWorthIt(Amount total, Amount? worth, decimal worthPercent) =>
        worth is not null && worth.Currency == total.Currency && total.Figure > worth.Figure * worthPercent / 100;
}
