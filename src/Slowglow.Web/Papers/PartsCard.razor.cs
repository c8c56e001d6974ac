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
    private readonly List<OrderLine> lines = [];
    private string supplier = "";
    private string part = "";
    private string pieces = "1";
    private string price = "";
    private string currency = "";
    private string rate = "1";
    private string freight = "0";
    private string tracking = "";
    private string chase = "";
    private DateOnly? promised;
    private DateOnly? chaseDay;
    private string chaseTracking = "";
    private bool blocks = true;
    private bool ordering;
    private string fitPart = "";
    private string fitPieces = "1";
    private string fitCost = "";
    private string fitPrice = "";
    private string fitFrom = "";

    [Inject]
    private FitPart FitPart { get; set; } = null!;

    private bool AddLine()
    {
        if (Whole(pieces, "the pieces") is not { } count || Figure(price, "the price") is not { } each)
        {
            return false;
        }

        lines.Add(new(part.Trim(), count, each));
        (part, pieces, price, Wrong) = ("", "1", "", []);
        return true;
    }

    private async Task OrderAsync()
    {
        if ((part.Trim().Length > 0 || lines.Count == 0) && !AddLine())
        {
            return;
        }

        if (Figure(rate, "the rate") is not { } exchange || Figure(freight, "the freight") is not { } carriage)
        {
            return;
        }

        var code = currency.Trim().Length == 0 ? Currency : currency.Trim().ToUpperInvariant();
        var order = new PartsOrder(supplier.Trim(), code, exchange, carriage, [.. lines], promised, tracking.Trim(), blocks);
        if (await EnterAsync(() => new PartsOrdered { What = order }))
        {
            lines.Clear();
            (supplier, currency, rate, freight, tracking, promised) = ("", "", "1", "0", "", null);
        }
    }

    private void Order(NeededStanding needed) =>
        (part, pieces, ordering) = (needed.Part.Part, (needed.Part.Quantity - needed.Ordered).ToString(Inv), true);

    private async Task ChaseAsync(int order)
    {
        if (await EnterAsync(() => new OrderChased { What = new(order, chase.Trim(), chaseDay, chaseTracking.Trim()) }))
        {
            (chase, chaseDay, chaseTracking) = ("", null, "");
        }
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
