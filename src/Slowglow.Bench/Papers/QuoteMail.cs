using System.Globalization;
using System.Text;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Shop;

namespace Slowglow.Bench.Papers;

/// <summary>The text of a mail that goes with a quote.</summary>
public static class QuoteMail
{
    public static string Write(Quote quote, string customer, string unit, int job, ShopRules rules)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"Dear {customer},\n\nyour {unit} (job {job}) has been looked at.");
        if (quote.Note.Length > 0)
        {
            text.Append(' ').Append(quote.Note);
        }

        text.Append("\n\n");
        foreach (var option in quote.Options)
        {
            var weeks = option.Priced.Weeks is { } w and > 0 ? $", about {w} weeks" : "";
            text.Append(
                CultureInfo.InvariantCulture,
                $"- {option.Name}: {rules.Papers.Say(option.Priced.Total)} with tax{weeks}\n"
            );
        }

        text.Append(
            CultureInfo.InvariantCulture,
            $"\nThese prices hold until {rules.Papers.Day(quote.ValidUntil)}. Please tell us what you choose.\n\n"
        );
        text.Append(rules.Party.Name).Append('\n').Append(rules.Party.Contact);
        return text.ToString();
    }
}
