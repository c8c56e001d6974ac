using System.Globalization;
using Microsoft.AspNetCore.Components;
using Slowglow.Bench.Counter;
using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Web.Papers;
using Slowglow.Workshop.Customers;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Money;
using Slowglow.Workshop.Photos;
using Slowglow.Workshop.Shop;

namespace Slowglow.Web.Pages;

/// <summary>Booking in: everything on one page, in the order in which it is said at the counter.</summary>
public sealed partial class BookInPage
{
    private ShopRules rules = ExampleRules.Rules;
    private Customer? customer;
    private int? earlier;
    private IReadOnlyList<Finding> wrong = [];
    private string name = "";
    private string phone = "";
    private string mail = "";
    private string address = "";
    private string maker = "";
    private string model = "";
    private string serial = "";
    private string mains = "230";
    private string condition = "";
    private string cameWith = "";
    private string complaint = "";
    private string setting = "";
    private string before = "";
    private string limit = "";
    private string fee = "";
    private string deposit = "";
    private string worth = "";
    private DateOnly? promised;
    private readonly List<ChosenPhoto> photos = [];

    [SupplyParameterFromQuery(Name = "customer")]
    public int? CustomerId { get; set; }

    [Inject]
    private BookIn BookIn { get; set; } = null!;

    [Inject]
    private ReadSettings Settings { get; set; } = null!;

    [Inject]
    private ReadCustomer ReadCustomer { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    protected override async Task OnInitializedAsync()
    {
        rules = (await Settings.RunAsync()).Rules ?? ExampleRules.Rules;
        mains = rules.MainsVolts.ToString("0.#", CultureInfo.InvariantCulture);
        fee = rules.BenchFee.ToString("0.00", CultureInfo.InvariantCulture);
        if (CustomerId is { } id)
        {
            customer = (await ReadCustomer.RunAsync(id)).Value;
        }
    }

    private async Task ChosenAsync((Customer? Customer, BoardCard? Job) chosen)
    {
        customer = chosen.Customer ?? customer;
        if (chosen.Job is { } card && (await ReadCustomer.UnitAsync(card.JobNumber)).Value is { } unit)
        {
            (maker, model, serial, mains) = (
                unit.Maker,
                unit.Model,
                unit.Serial,
                unit.MainsVolts.ToString(CultureInfo.InvariantCulture)
            );
            earlier = card.JobNumber;
        }
    }

    private async Task BookAsync()
    {
        List<Finding> unread = [];
        var volts = TypedFigure.Read(mains.Replace("V", "", StringComparison.OrdinalIgnoreCase));
        if (volts is null)
        {
            unread.Add(Unread(mains, "the mains it is strapped for", "230"));
        }

        var booking = new Booking(
            customer?.Id,
            customer?.Name ?? name,
            phone,
            mail,
            address,
            maker,
            model,
            serial,
            (double)(volts ?? 230),
            complaint,
            setting,
            before,
            condition,
            cameWith,
            Money(worth, "what it is worth", unread),
            Money(fee, "the bench fee", unread),
            Money(limit, "the limit", unread),
            Money(deposit, "what was paid", unread),
            promised,
            earlier,
            [.. photos.Select(p => new TakenPhoto(p.Content, p.Caption.Trim()))]
        );
        if (unread.Count > 0)
        {
            wrong = unread;
            return;
        }

        var booked = await BookIn.RunAsync(booking);
        wrong = booked.Findings;
        if (booked.Value is { } job)
        {
            Navigation.NavigateTo($"/job/{job.Number}/papers");
        }
    }

    private Amount? Money(string typed, string what, List<Finding> unread)
    {
        if (typed.Trim().Length == 0)
        {
            return null;
        }

        if (TypedFigure.Read(typed) is { } figure)
        {
            return new(figure, rules.Currency);
        }

        unread.Add(Unread(typed, what, "45 or 45.50"));
        return null;
    }

    private static Finding Unread(string typed, string what, string remedy) =>
        new(Severity.Error, Place.None, $"\"{(typed.Length > 40 ? typed[..40] : typed)}\" is no figure for {what}.", remedy);
}
