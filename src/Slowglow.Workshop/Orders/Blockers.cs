using System.Globalization;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Workshop.Orders;

/// <summary>What a job cannot go on without.</summary>
public static class Blockers
{
    private const int Longest = 400;

    /// <summary>"2 x EL84 from Invented Valves, promised 3 Dec 2026; 1 x T1: not ordered yet"; empty when nothing blocks it.</summary>
    public static string Say(JobDealings dealings)
    {
        var ordered = dealings.Orders.Where(Blocks).Select(Missing);
        var needed = dealings
            .NeededParts.Where(n => !n.IsOrdered)
            .Select(n =>
                string.Create(CultureInfo.InvariantCulture, $"{n.Part.Quantity - n.Fitted} x {n.Part.Part}: not ordered yet")
            );
        var all = string.Join("; ", ordered.Concat(needed));
        return all.Length > Longest ? all[..Longest] + "..." : all;
    }

    /// <summary>The last day on which something that blocks the job was promised; null when none was.</summary>
    public static DateOnly? Due(JobDealings dealings) => dealings.Orders.Where(Blocks).Max(o => o.Promised);

    private static bool Blocks(OpenOrder order) => order.Order.Blocks && !order.IsComplete;

    private static string Missing(OpenOrder order)
    {
        var lines = order
            .Order.Lines.Zip(order.Came)
            .Where(l => l.Second < l.First.Quantity)
            .Select(l => string.Create(CultureInfo.InvariantCulture, $"{l.First.Quantity - l.Second} x {l.First.Part}"));
        var day = order.Promised is { } promised
            ? promised.ToString("', promised 'd MMM yyyy", CultureInfo.InvariantCulture)
            : ", no day promised";
        return $"{string.Join(", ", lines)} from {order.Order.Supplier}{day}";
    }
}
