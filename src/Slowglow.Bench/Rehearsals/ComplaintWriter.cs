using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Rehearsals;

/// <summary>
/// Says in a customer's words what a unit does that it did not do when it was sold, from how both handle a signal. Bounds: 6 dB of level, 8 %
/// and thrice the healthy distortion, 12 dB of hum, 0.5 V of DC at the output. Common practice, no source.
/// </summary>
internal sealed class ComplaintWriter(Sheet sheet)
{
    private const double SilentDb = 30;
    private const double QuietDb = 6;
    private const double Rough = 0.08;
    private const double HumDb = 12;
    private const double OffsetVolts = 0.5;

    /// <summary>Hum this far below the output at drive is not heard.</summary>
    private const double Inaudible = 3e-4;
    private static readonly string[] Ordinals = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth"];
    private readonly HashSet<string> fuses = [.. sheet.Parts.OfType<FusePart>().Select(f => f.Designator)];

    /// <summary>For each set of faults what is said; null when there is nothing to complain of.</summary>
    public IReadOnlyList<string?> Of(
        Worlds sold,
        Worlds cameIn,
        IReadOnlyList<IReadOnlyList<Fault>> sets,
        CancellationToken cancel
    )
    {
        var channels = sheet.Signals.Select(p => Channel(sold, cameIn, sets, p.Name, cancel)).ToList();
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
        return [.. bad.Select(b => b.Settled && good.Settled ? Compare(good, b) : (IReadOnlyList<string>)[])];
    }

    private static List<string> Compare(SignalReport good, SignalReport bad)
    {
        var words = new List<string>();
        var drop = Db(good.LevelVolts, Math.Max(Math.Abs(bad.LevelVolts), 1e-9));
        if (Math.Abs(drop) > QuietDb)
        {
            words.Add(
                drop > SilentDb ? "silent"
                : drop > 0 ? "quiet"
                : "too loud"
            );
        }
        if (drop < SilentDb && bad.DistortionAtDrive > Math.Max(Rough, 3 * good.DistortionAtDrive))
        {
            words.Add("distorted");
        }
        if (Db(bad.HumVolts, Math.Max(Math.Abs(good.HumVolts), Inaudible * good.OutputAtDrive)) > HumDb)
        {
            words.Add("hums");
        }
        if (Math.Abs(bad.OffsetVolts - good.OffsetVolts) > OffsetVolts)
        {
            words.Add("DC on the output");
        }
        return words;
    }

    private static double Db(double a, double b) => 20 * Math.Log10(Math.Abs(a) / b);
}
