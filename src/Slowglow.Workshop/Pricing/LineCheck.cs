using System.Globalization;

namespace Slowglow.Workshop.Pricing;

/// <summary>Looks lines over before they are priced.</summary>
public static class LineCheck
{
    private const decimal MostQuantity = 100_000;
    private const decimal MostPrice = 10_000_000;
    private const int LongestText = 400;

    /// <summary>Everything that keeps these lines from standing on a paper of that day; empty when nothing does.</summary>
    public static IReadOnlyList<Objection> Look(IReadOnlyList<ChargeLine> lines, TaxTable table, DateOnly day)
    {
        if (lines.Count == 0)
        {
            return [new("There are no lines.", "At least one: labour, a part, a fee.")];
        }

        IReadOnlyList<Objection> wrong = [.. lines.SelectMany((line, i) => Look(line, i + 1, table, day))];
        return wrong.Count > 0 ? wrong : [.. Below(lines)];
    }

    private static IEnumerable<Objection> Look(ChargeLine line, int number, TaxTable table, DateOnly day)
    {
        if (string.IsNullOrWhiteSpace(line.Text) || line.Text.Length > LongestText)
        {
            yield return new(
                $"Line {number} has no text, or one beyond {LongestText} characters.",
                "What it charges for, in a few words."
            );
        }

        if (line.Quantity is <= 0 or > MostQuantity)
        {
            yield return new(
                $"Line {number} has a quantity of {Say(line.Quantity)}.",
                "Above 0: hours for labour, pieces otherwise."
            );
        }

        if (line.UnitPrice is < 0 or > MostPrice)
        {
            yield return new(
                $"Line {number} has a price of {Say(line.UnitPrice)}.",
                "0 or more. To take something off, add a line of the kind discount."
            );
        }

        if (line.Weeks is < 0 or > 104)
        {
            yield return new($"Line {number} waits {line.Weeks} weeks.", "0 to 104 weeks, or nothing.");
        }

        if (table.On(line.Tax, day) is null)
        {
            yield return new(
                $"Line {number} names the tax rate \"{line.Tax}\", which the shop has not set for {day:O}.",
                table.Names.Count == 0 ? "Set the shop's tax rates first." : $"Set: {string.Join(", ", table.Names)}."
            );
        }
    }

    private static IEnumerable<Objection> Below(IReadOnlyList<ChargeLine> lines)
    {
        if (lines.Sum(l => l.Exact) < 0)
        {
            yield return new("The discounts come to more than the lines.", "To give money back, write a credit note.");
        }
    }

    private static string Say(decimal figure) => figure.ToString("0.##", CultureInfo.InvariantCulture);
}
