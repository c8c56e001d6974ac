using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Setups;

namespace Slowglow.Trials;

/// <summary>
/// Says in a customer's words what a faulty unit does, from how it handles a signal; null when there is nothing to complain of. The bounds are
/// those of this file alone: 6 dB of level, 8 % and thrice the healthy distortion, 12 dB of hum, 0.5 V of DC at the output.
/// </summary>
internal sealed class ComplaintWriter(Worlds worlds)
{
    private readonly Sheet sheet = worlds.Circuit.Sheet;

    public string? Of(IReadOnlyList<Fault> faults)
    {
        var paths = sheet.Signals;
        var said = paths.Select(p => Of(faults, p.Name)).ToList();
        var blown = faults.Count > 1 || sheet.Parts.OfType<FusePart>().Any(f => faults.Any(x => x.Part == f.Designator));
        var fuse = blown ? "fuse blown" : null;
        if (said.All(s => s.Count == 0) && fuse is null)
        {
            return null;
        }
        var same = paths.Count < 2 || said.All(s => s.SequenceEqual(said[0]));
        var sound = same
            ? string.Join(" and ", said.Count > 0 ? said[0] : [])
            : string.Join(
                ", ",
                paths.Select((p, i) => $"{Ordinal(i)} channel {(said[i].Count == 0 ? "fine" : string.Join(" and ", said[i]))}")
            );
        return string.Join(", ", new[] { sound, fuse }.Where(s => !string.IsNullOrEmpty(s)));
    }

    private List<string> Of(IReadOnlyList<Fault> faults, string channel)
    {
        var setup = Setup.Default with { Channel = channel };
        var reports = worlds.Signal(
            setup,
            [
                [],
                faults,
            ],
            channel
        );
        var (good, bad) = (reports[0], reports[1]);
        var words = new List<string>();
        if (!bad.Settled)
        {
            return words;
        }
        var drop = 20 * Math.Log10(Math.Abs(good.LevelVolts) / Math.Max(Math.Abs(bad.LevelVolts), 1e-9));
        words.AddRange(
            drop > 30 ? ["silent"]
            : drop > 6 ? ["quiet"]
            : drop < -6 ? ["too loud"]
            : Array.Empty<string>()
        );
        if (drop < 30 && bad.DistortionAtDrive > Math.Max(0.08, 3 * good.DistortionAtDrive))
        {
            words.Add("distorted");
        }
        var audible = Math.Max(Math.Abs(good.HumVolts), 3e-4 * good.OutputAtDrive);
        if (20 * Math.Log10(Math.Abs(bad.HumVolts) / audible) > 12)
        {
            words.Add("hums");
        }
        if (Math.Abs(bad.OffsetVolts - good.OffsetVolts) > 0.5)
        {
            words.Add("DC on the output");
        }
        return words;
    }

    private static string Ordinal(int i) =>
        i switch
        {
            0 => "first",
            1 => "second",
            _ => "third",
        };
}
