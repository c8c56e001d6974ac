using Slowglow.Documents.Drawing;
using Slowglow.Documents.Words;
using Slowglow.Workshop.Pricing;

namespace Slowglow.Documents.Pieces;

/// <summary>Lines with tax and totals.</summary>
internal static class LineTable
{
    private static readonly Column[] Columns =
    [
        new("What", 46),
        new("Quantity", 11, true),
        new("Price", 14, true),
        new("Tax", 10, true),
        new("Amount", 15, true),
    ];

    public static void Draw(Flow flow, Priced priced)
    {
        flow.Table(Columns, [.. priced.Lines.Select(l => Row(flow, l))]);
        flow.Space(4);
        var included = priced.Rule.PricesIncludeTax;
        List<(string, decimal)> totals = [];
        if (!included || priced.Taxes.Count > 1)
        {
            totals.Add(("Net", priced.Net));
        }

        totals.AddRange(
            priced.Taxes.Select(t => ($"{(included ? "of which tax" : "Tax")} {t.Name} {flow.Format.Percent(t.Percent)}", t.Tax))
        );
        foreach (var (name, figure) in totals)
        {
            Total(flow, name, figure, priced.Rule.Currency, false);
        }

        Total(flow, "Total", priced.Gross, priced.Rule.Currency, true);
    }

    /// <summary>A name and a figure under the column of amounts.</summary>
    public static void Total(Flow flow, string name, decimal figure, string currency, bool strong)
    {
        var font = strong ? Face.Bold : Face.Body;
        flow.Pair(name, $"{flow.Format.Figure(figure)} {currency}", font);
    }

    private static IReadOnlyList<string> Row(Flow flow, PricedLine line) =>
        [
            line.Line.Weeks is { } weeks ? $"{line.Line.Text} (about {weeks} weeks)" : line.Line.Text,
            flow.Format.Quantity(line.Line.Quantity) + (line.Line.Kind == LineKind.Labour ? " h" : ""),
            flow.Format.Figure(line.Line.UnitPrice),
            flow.Format.Percent(line.Percent),
            flow.Format.Figure(line.Amount),
        ];
}
