using Slowglow.Documents.Drawing;
using Slowglow.Documents.Words;
using Slowglow.Workshop.Papers;

namespace Slowglow.Documents.Pieces;

/// <summary>Head of every paper: the shop, what paper it is, whose.</summary>
internal static class Letterhead
{
    private const double LogoHigh = 46;

    /// <param name="logo">The shop's picture; null when it has none. One that cannot be drawn is left out: the paper is whole without it.</param>
    public static void Draw(
        Flow flow,
        Party shop,
        byte[]? logo,
        string title,
        DateOnly day,
        Party customer,
        IReadOnlyList<(string Name, string Value)> facts
    )
    {
        var half = flow.Width / 2;
        using var picture = logo is null ? null : ReadyPicture.Read(logo);
        flow.Beside(
            () => flow.Text(title, Face.Title, Face.Glow, 0, half),
            () =>
            {
                if (picture is not null)
                {
                    flow.Mark(picture, half + 40, half - 40, LogoHigh);
                }

                flow.Text(shop.Name, Face.Bold, null, half + 40, half - 40);
                flow.Text(Contact(shop), Face.Small, Face.Faint, half + 40, half - 40);
            }
        );
        flow.Space(14);
        flow.Beside(
            () =>
            {
                flow.Text("FOR", Face.Label, Face.Faint, 0, half);
                flow.Text(customer.Name, Face.Bold, null, 0, half);
                flow.Text(Contact(customer), null, null, 0, half);
            },
            () => Facts(flow, [("Date", flow.Format.Day(day)), .. facts], half + 40)
        );
        flow.Space(8);
    }

    /// <summary>Names and values under each other.</summary>
    public static void Facts(Flow flow, IReadOnlyList<(string Name, string Value)> facts, double left)
    {
        foreach (var (name, value) in facts.Where(f => f.Value.Length > 0))
        {
            flow.Beside(
                () =>
                {
                    // On the line of the larger letters beside it.
                    flow.Space(Face.Body.Size - Face.Small.Size);
                    flow.Text(name, Face.Small, Face.Faint, left, 80);
                },
                () => flow.Text(value, null, null, left + 84, flow.Width - left - 84)
            );
        }
    }

    private static string Contact(Party party)
    {
        var tax = party.TaxNumber.Length > 0 ? "Tax no. " + party.TaxNumber : "";
        return string.Join('\n', new[] { party.Address, party.Contact, tax }.Where(t => t.Length > 0));
    }
}
