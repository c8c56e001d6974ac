using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Rehearsals;

/// <summary>
/// Puts together what a customer says of a unit, from how it and the same unit without the fault handle a signal.
/// </summary>
internal sealed class ComplaintWriter(Sheet sheet)
{
    private static readonly string[] Ordinals = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth"];
    private readonly HashSet<string> fuses = [.. sheet.Parts.OfType<FusePart>().Select(f => f.Designator)];

    /// <summary>For each set of faults what is said; null when there is nothing to complain of.</summary>
    public IReadOnlyList<string?> Of(
        Customer customer,
        Worlds sold,
        Worlds cameIn,
        IReadOnlyList<IReadOnlyList<Fault>> sets,
        CancellationToken cancel
    )
    {
        var channels = sheet.Signals.Select(p => Channel(customer, sold, cameIn, sets, p.Name, cancel)).ToList();
        return [.. sets.Select((faults, k) => Say([.. channels.Select(c => c[k])], IsBlown(faults)))];
    }

    private bool IsBlown(IReadOnlyList<Fault> faults) => faults.Any(f => f.Mode == FailureMode.Open && fuses.Contains(f.Part));

    private static string? Say(IReadOnlyList<IReadOnlyList<string>> said, bool isBlown)
    {
        if (said.All(s => s.Count == 0) && !isBlown)
        {
            return null;
        }
        var same = said.Count < 2 || said.All(s => s.SequenceEqual(said[0]));
        var sound = same
            ? string.Join(" and ", said.FirstOrDefault() ?? [])
            : string.Join(
                ", ",
                said.Select((s, i) => $"{Ordinals[i]} channel {(s.Count == 0 ? "fine" : string.Join(" and ", s))}")
            );
        return isBlown ? $"{sound}{(sound.Length > 0 ? ", " : "")}fuse blown" : sound;
    }

    private static List<IReadOnlyList<string>> Channel(
        Customer customer,
        Worlds sold,
        Worlds cameIn,
        IReadOnlyList<IReadOnlyList<Fault>> sets,
        string channel,
        CancellationToken cancel
    )
    {
        var setup = Setup.Default with { Channel = channel };
        var good = sold.Signal(setup, [Array.Empty<Fault>()], channel, cancel: cancel)[0];
        var bad = cameIn.Signal(setup, sets, channel, cancel: cancel);
        return [.. bad.Select(b => b.Settled && good.Settled ? customer.SaysOf(good, b) : [])];
    }
}
