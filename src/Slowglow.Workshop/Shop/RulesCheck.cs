using Slowglow.Workshop.Money;
using Slowglow.Workshop.People;
using Slowglow.Workshop.Safety;

namespace Slowglow.Workshop.Shop;

/// <summary>Looks the shop's rules over before they hold.</summary>
public static class RulesCheck
{
    /// <summary>Days: ten years.</summary>
    private const int LongestWait = 3650;
    private const int MostReminders = 12;

    public static IReadOnlyList<Objection> Look(ShopRules rules) =>
        [.. Papers(rules), .. Figures(rules), .. Waiting(rules), .. PeopleCheck.Look(rules.People)];

    private static bool Rise<T>(IEnumerable<T> figures)
        where T : IComparable<T>
    {
        var all = figures.ToList();
        return all.Zip(all.Skip(1)).All(p => p.First.CompareTo(p.Second) < 0);
    }

    private static IEnumerable<Objection> Papers(ShopRules rules)
    {
        if (string.IsNullOrWhiteSpace(rules.Party.Name))
        {
            yield return new("The shop has no name.", "As it stands on its papers.");
        }

        if (!Currencies.IsCode(rules.Currency))
        {
            yield return new($"\"{rules.Currency}\" is no currency.", "Three capitals: EUR, GBP, USD.");
        }

        if (rules.Taxes.Names.All(n => n != rules.UsualTax))
        {
            yield return new($"The usual tax \"{rules.UsualTax}\" is not in the table.", "Name one of its rates.");
        }

        if (rules.LabelAddress.Length > 0 && !IsAddress(rules.LabelAddress))
        {
            yield return new("The address for labels cannot be one.", "http://bench.lan:5080, or nothing.");
        }

        if (rules.Format is { IsKnown: false })
        {
            yield return new("Days or figures on papers have no such shape.", "One of those listed.");
        }

        if (rules.MainsVolts is not (>= 90 and <= 260))
        {
            yield return new("That is no mains voltage.", "90 to 260 V: 100, 115, 120, 230, 240.");
        }

        if (!SafetySets.Names.Contains(rules.SafetySet))
        {
            yield return new("The safety test set is not known.", string.Join("; ", SafetySets.Names));
        }
    }

    private static bool IsAddress(string text) =>
        Uri.TryCreate(text, UriKind.Absolute, out var address) && address.Scheme is ("http" or "https");

    private static IEnumerable<Objection> Figures(ShopRules rules)
    {
        if (rules.Taxes.Rates.Any(r => r.Percent is < 0 or > 100 || string.IsNullOrWhiteSpace(r.Name)))
        {
            yield return new("A tax rate has no name or is not 0 to 100 %.", "standard 20 from 2026-01-01");
        }

        if (rules.Labour.Count == 0 || rules.Labour.Any(l => l.PerHour < 0 || string.IsNullOrWhiteSpace(l.Name)))
        {
            yield return new("A labour rate has no name or is below 0.", "bench 60");
        }

        if (rules.Hours.Step is < 1 or > 60 || rules.Hours.Least is < 0 or > 480)
        {
            yield return new("Labour is charged in steps of 1 to 60 minutes, 0 to 480 at least.", "15 and 30");
        }

        if (
            rules.BenchFee < 0
            || rules.Markup.Least < 0
            || rules.Markup.Steps.Any(s => s.Percent < 0)
            || rules.Markup.RoundUpTo < 0
            || rules.Storage.PerDay < 0
            || rules.Storage.Most < 0
        )
        {
            yield return new("A fee or a mark-up is below 0.", "0 or more");
        }

        if (!Rise(rules.Markup.Steps.Select(s => s.UpTo ?? decimal.MaxValue)))
        {
            yield return new("The steps of the mark-up do not rise.", "10 100, then 50 50, then: above 25");
        }
    }

    private static IEnumerable<Objection> Waiting(ShopRules rules)
    {
        if (rules.WorthPercent is < 1 or > 1000 || rules.QuoteDays is < 1 or > 365 || rules.PayDays is < 0 or > 365)
        {
            yield return new(
                "The share of the worth, or the days of a quote or an invoice, cannot be.",
                "60 %, 30 days, 14 days"
            );
        }

        if (
            rules.Storage.FreeDays is < 0 or > LongestWait
            || rules.ChaseDays is < 0 or > LongestWait
            || rules.Storage.RemindAfter.Count > MostReminders
            || rules.Storage.RemindAfter.Any(d => d is < 1 or > LongestWait)
            || !Rise(rules.Storage.RemindAfter)
        )
        {
            yield return new(
                $"Reminders and storage go by days from 1 to {LongestWait}, reminders each later than the one before, {MostReminders} at most.",
                "14 30 60; free for 30; a supplier asked again after 7, or 0 for never"
            );
        }

        if (rules.WarrantyMonths is < 0 or > 120 || rules.BackupsKept is < 0 or > 365)
        {
            yield return new("Warranty is 0 to 120 months; 0 to 365 backups are kept.", "6 and 7");
        }
    }
}
