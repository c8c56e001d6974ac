using System.Globalization;
using Slowglow.Workshop.Shop;

namespace Slowglow.Web.Pages.Settings;

/// <summary>What the shop waits for and how long, while it is being typed.</summary>
public sealed class TypedWaiting
{
    private static readonly CultureInfo Inv = CultureInfo.InvariantCulture;

    public string QuoteDays { get; set; } = "";
    public string PayDays { get; set; } = "";
    public string Warranty { get; set; } = "";
    public string WorthPercent { get; set; } = "";
    public string FreeDays { get; set; } = "";
    public string PerDay { get; set; } = "";
    public string Most { get; set; } = "";
    public string RemindAfter { get; set; } = "";
    public string ChaseDays { get; set; } = "";
    public string Backups { get; set; } = "";

    public static TypedWaiting Of(ShopRules rules) =>
        new()
        {
            QuoteDays = Say(rules.QuoteDays),
            PayDays = Say(rules.PayDays),
            Warranty = Say(rules.WarrantyMonths),
            WorthPercent = Say(rules.WorthPercent),
            FreeDays = Say(rules.Storage.FreeDays),
            PerDay = Say(rules.Storage.PerDay),
            Most = rules.Storage.Most is { } most ? Say(most) : "",
            RemindAfter = string.Join(' ', rules.Storage.RemindAfter.Select(d => d.ToString(Inv))),
            ChaseDays = Say(rules.ChaseDays),
            Backups = Say(rules.BackupsKept),
        };

    internal ShopRules Read(ShopRules basis, TypedFields fields) =>
        basis with
        {
            QuoteDays = fields.Whole(QuoteDays, "the days of a quote"),
            PayDays = fields.Whole(PayDays, "the days to pay in"),
            WarrantyMonths = fields.Whole(Warranty, "the warranty"),
            WorthPercent = fields.Figure(WorthPercent, "the share of the worth"),
            Storage = new(
                fields.Whole(FreeDays, "the free days"),
                fields.Figure(PerDay, "storage a day"),
                fields.Optional(Most, "the most for storage"),
                fields.Wholes(RemindAfter, "a day of reminding")
            ),
            ChaseDays = fields.Whole(ChaseDays, "the days of a supplier's silence"),
            BackupsKept = fields.Whole(Backups, "the backups kept"),
        };

    private static string Say(decimal figure) => figure.ToString("0.##", Inv);
}
