using System.Globalization;
using Slowglow.Sheets;
using Slowglow.Workshop.Money;
using Slowglow.Workshop.Pricing;

namespace Slowglow.Web.Papers;

/// <summary>Makes lines of what was typed.</summary>
public static class TypedLines
{
    /// <summary>Blank lines are left out; value null when a figure cannot be read.</summary>
    public static Parsed<IReadOnlyList<ChargeLine>> Read(IEnumerable<TypedLine> typed)
    {
        List<ChargeLine> lines = [];
        List<Finding> wrong = [];
        foreach (var line in typed.Where(l => !l.IsBlank))
        {
            var quantity = TypedFigure.Read(line.Quantity);
            var price = TypedFigure.Read(line.Price);
            int? weeks = int.TryParse(line.Weeks.Trim(), CultureInfo.InvariantCulture, out var w) ? w : null;
            if (quantity is null || price is null || (weeks is null && line.Weeks.Trim().Length > 0))
            {
                wrong.Add(
                    new(
                        Severity.Error,
                        Place.None,
                        $"The line \"{(line.Text.Length > 60 ? line.Text[..60] : line.Text)}\" has a figure that cannot be read.",
                        "Quantity 1.5, price 12.50, weeks 3 or nothing."
                    )
                );
                continue;
            }

            lines.Add(new(line.Kind, line.Text.Trim(), quantity.Value, price.Value, line.Tax, weeks));
        }

        return new(wrong.Count == 0 ? lines : null, wrong);
    }
}
