using System.Globalization;
using Slowglow.Power.Offers;
using Spectre.Console;

namespace Slowglow.Cli.Tables;

/// <summary>The answer of <c>offers</c> for people.</summary>
internal static class OffersReport
{
    public static void Write(IAnsiConsole console, string part, IReadOnlyList<OfferAnswer> offers)
    {
        console.Say($"In the place of {part}, by what the rails would be in this circuit:");
        var table = Layout.Table(
            "Offer",
            "Rails",
            ">Worst",
            ">Busiest winding",
            ">In all",
            ">Weeks",
            "Fixing",
            "Mounting",
            "Verdict"
        );
        foreach (var a in offers)
        {
            table.Row(
                a.Offer.Name,
                string.Join(
                    ", ",
                    a.Rails.Select(r => $"{r.Where} {Figures.Say(r.Given, "V")} (now {Figures.Say(r.Asked, "V")})")
                ),
                double.IsNaN(a.WorstRail) ? "" : Figures.Percent(a.WorstRail),
                double.IsNaN(a.Load) ? "rating unknown" : $"{a.LoadedWinding} {Figures.Percent(a.Load)}",
                a.Offer.Total?.ToString("0.00", CultureInfo.InvariantCulture) ?? "",
                Figures.Say(a.Offer.Weeks, ""),
                a.Offer.Mounting,
                a.Mounting.Words,
                Verdict(a)
            );
        }

        console.Write(table);
        CautionLines.Write(console);
    }

    private static string Verdict(OfferAnswer a) =>
        a.Suits ? "suits"
        : a.Lacks is { } lacks ? lacks
        : a.Load > 1 ? $"{a.LoadedWinding} is overloaded"
        : a.Mounting.Fits == false ? a.Mounting.Words
        : "rails too far off";
}
