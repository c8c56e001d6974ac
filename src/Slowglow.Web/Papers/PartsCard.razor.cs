using System.Globalization;
using Microsoft.AspNetCore.Components;
using Slowglow.Bench.Stock;
using Slowglow.Workshop.Orders;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Web.Papers;

/// <summary>Orders, what came, what was fitted.</summary>
public sealed partial class PartsCard
{
    private static readonly CultureInfo Inv = CultureInfo.InvariantCulture;
    private OrderForm orderForm = null!;
    private bool ordering;
    private string fitPart = "";
    private string fitPieces = "1";
    private string fitCost = "";
    private string fitPrice = "";
    private string fitFrom = "";

    [Inject]
    private FitPart FitPart { get; set; } = null!;

    private void Order(NeededStanding needed)
    {
        ordering = true;
        orderForm.Begin(needed);
    }

    private void Fill(OrderedLine landed, string from) =>
        (fitPart, fitPieces, fitCost, fitPrice, fitFrom) = (
            landed.Line.Part,
            "1",
            landed.LandedEach.ToString("0.00", Inv),
            "",
            from
        );

    private async Task FitAsync()
    {
        if (
            Whole(fitPieces, "the pieces") is not { } count
            || Figure(fitCost, "the cost") is not { } cost
            || !Optional(fitPrice, "the price", out var typed)
        )
        {
            return;
        }

        var fitted = new FittedPart(
            fitPart.Trim(),
            count,
            cost,
            typed ?? File.Rules.Markup.Price(cost, Currency),
            fitFrom.Trim()
        );
        if (Took(await FitPart.RunAsync(File.Job.Number, fitted, By)))
        {
            (fitPart, fitPieces, fitCost, fitPrice, fitFrom) = ("", "1", "", "", "");
        }
    }
}
