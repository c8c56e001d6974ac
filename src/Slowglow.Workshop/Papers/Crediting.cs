using System.Globalization;
using Slowglow.Workshop.Money;
using Slowglow.Workshop.Pricing;

namespace Slowglow.Workshop.Papers;

/// <summary>
/// Works out what a credit note takes back. Tax goes back by what has been credited so far in all, so that credit notes over a whole
/// invoice take back its tax to the last coin, in however many steps.
/// </summary>
public static class Crediting
{
    /// <summary>What is left to take back of each line of the invoice.</summary>
    public static IReadOnlyList<decimal> Left(Priced invoice, IReadOnlyList<Paper> earlier) =>
        [.. invoice.Lines.Select((line, i) => line.Amount - Taken(i, earlier))];

    /// <summary>What keeps these amounts from being credited; empty when nothing does.</summary>
    public static IReadOnlyList<Objection> Look(
        Priced invoice,
        IReadOnlyList<Paper> earlier,
        IReadOnlyList<CreditedAmount> wanted
    )
    {
        if (wanted.Count == 0 || wanted.All(w => w.Amount == 0))
        {
            return [new("Nothing is to be credited.", "An amount for at least one line.")];
        }

        var left = Left(invoice, earlier);
        List<Objection> wrong =
        [
            .. wanted
                .Where(w => w.Line < 0 || w.Line >= left.Count || !Fits(w.Amount, left[w.Line]))
                .Select(w => new Objection(
                    $"Line {w.Line + 1} cannot be credited with {w.Amount.ToString("0.00", CultureInfo.InvariantCulture)}.",
                    w.Line >= 0 && w.Line < left.Count
                        ? $"{left[w.Line].ToString("0.00", CultureInfo.InvariantCulture)} of it is left."
                        : "The invoice has no such line."
                )),
        ];
        if (wrong.Count == 0 && wanted.Sum(w => w.Amount) > left.Sum())
        {
            wrong.Add(new("The credit would come to more than is left of the invoice.", "Credit the discount line with it."));
        }

        return wrong;
    }

    /// <summary>The lines and taxes of the credit note; all positive where the invoice's are.</summary>
    public static Priced Work(Priced invoice, IReadOnlyList<Paper> earlier, IReadOnlyList<CreditedAmount> wanted, DateOnly day)
    {
        var lines = wanted.Select(w => Line(invoice, earlier, w)).ToList();
        var shares = invoice.Taxes.Select(t => Share(t, invoice, earlier, wanted, lines)).Where(s => s.Net != 0 || s.Tax != 0);
        return new(invoice.Rule, day, lines, [.. shares]);
    }

    private static PricedLine Line(Priced invoice, IReadOnlyList<Paper> earlier, CreditedAmount wanted)
    {
        var line = invoice.Lines[wanted.Line];
        var before = Taken(wanted.Line, earlier);
        var tax = Part(line.Tax, before + wanted.Amount, line.Amount) - Part(line.Tax, before, line.Amount);
        decimal Part(decimal whole, decimal taken, decimal amount) =>
            amount == 0 ? 0 : Currencies.Round(whole * taken / amount, invoice.Rule.Currency);
        return line with { Amount = wanted.Amount, Tax = tax };
    }

    private static TaxShare Share(
        TaxShare whole,
        Priced invoice,
        IReadOnlyList<Paper> earlier,
        IReadOnlyList<CreditedAmount> wanted,
        IReadOnlyList<PricedLine> lines
    )
    {
        bool Mine(PricedLine line) => line.Line.Tax == whole.Name && line.Percent == whole.Percent;
        var now = lines.Where(Mine).Sum(l => l.Amount);
        if (invoice.Rule.Rounding == TaxRounding.PerLine)
        {
            return Of(now, lines.Where(Mine).Sum(l => l.Tax));
        }

        var amount = invoice.Lines.Where(Mine).Sum(l => l.Amount);
        var before = invoice.Lines.Select((l, i) => Mine(l) ? Taken(i, earlier) : 0).Sum();
        return Of(now, Part(before + now) - Part(before));

        decimal Part(decimal taken) => amount == 0 ? 0 : Currencies.Round(whole.Tax * taken / amount, invoice.Rule.Currency);
        TaxShare Of(decimal sum, decimal tax) => whole with { Net = invoice.Rule.PricesIncludeTax ? sum - tax : sum, Tax = tax };
    }

    private static decimal Taken(int line, IReadOnlyList<Paper> earlier) =>
        earlier.Sum(p => p.Priced.Lines.Where((_, i) => p.CreditedLines![i] == line).Sum(l => l.Amount));

    private static bool Fits(decimal amount, decimal left) =>
        left >= 0 ? amount >= 0 && amount <= left : amount <= 0 && amount >= left;
}
