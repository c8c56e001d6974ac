using Slowglow.Quantities;

namespace Slowglow.Bench.Questions;

/// <summary>Says in plain words how a channel's levels compare with those that belong there.</summary>
public static class LevelWords
{
    /// <summary>Smaller differences than this ratio are not worth a sentence: a fifth is about 2 dB.</summary>
    private const double Worth = 0.8;

    /// <summary>Sentences such as "First channel gives 1.2 V where 3.4 V belongs."; one sentence when nothing differs.</summary>
    public static IReadOnlyList<string> Compare(ChannelLevels healthy, ChannelLevels actual)
    {
        var name = NameOf(actual.Channel);
        List<string> sentences =
        [
            .. Level(name, healthy.LevelVolts, actual.LevelVolts),
            .. Clean(name, healthy, actual),
            .. Hum(name, healthy.HumVolts, actual.HumVolts),
            .. Offset(name, healthy, actual),
        ];
        return sentences.Count > 0 ? sentences : [$"{name} is as it should be: {Volts(actual.LevelVolts)} at the output."];
    }

    /// <summary>"First channel", or "The output" when the sheet has a single unnamed path.</summary>
    public static string NameOf(string channel)
    {
        if (channel is "signal" or "")
        {
            return "The output";
        }

        var name = char.ToUpperInvariant(channel[0]) + channel[1..];
        return name.Contains("channel", StringComparison.OrdinalIgnoreCase) ? name : $"{name} channel";
    }

    private static IEnumerable<string> Level(string name, double belongs, double is_)
    {
        if (double.IsNaN(is_))
        {
            yield return $"{name} cannot be computed: this world does not settle.";
        }
        else if (is_ < belongs * 1e-3)
        {
            yield return $"{name} is silent where {Volts(belongs)} belongs.";
        }
        else if (Differs(belongs, is_))
        {
            yield return $"{name} gives {Volts(is_)} where {Volts(belongs)} belongs.";
        }
    }

    private static IEnumerable<string> Clean(string name, ChannelLevels healthy, ChannelLevels actual)
    {
        if (!double.IsFinite(actual.CleanVolts) || !Differs(healthy.CleanVolts, actual.CleanVolts))
        {
            yield break;
        }

        var loud = actual.CleanWatts is >= 0.01 or 0 && double.IsFinite(healthy.CleanWatts);
        var (now, before) = loud
            ? (Engineering.Format(actual.CleanWatts, "W", 2), Engineering.Format(healthy.CleanWatts, "W", 2))
            : (Volts(actual.CleanVolts), Volts(healthy.CleanVolts));
        yield return actual.CleanVolts < healthy.CleanVolts
            ? $"{name} stays clean only up to {now}, where {before} belongs."
            : $"{name} stays clean up to {now}, more than the {before} that belongs.";
    }

    private static IEnumerable<string> Hum(string name, double belongs, double is_)
    {
        if (is_ > 1e-3 && is_ > 2 * belongs)
        {
            yield return $"{name} hums: {Volts(is_)} without signal, where {Volts(belongs)} belongs.";
        }
    }

    private static IEnumerable<string> Offset(string name, ChannelLevels healthy, ChannelLevels actual)
    {
        var moved = Math.Abs(actual.OffsetVolts - healthy.OffsetVolts);
        if (moved > 0.1 && moved > 0.1 * Math.Abs(healthy.OffsetVolts))
        {
            yield return $"{name} has {Volts(actual.OffsetVolts)} DC on its output, where {Volts(Math.Round(healthy.OffsetVolts, 3))} belongs.";
        }
    }

    private static bool Differs(double belongs, double is_) => is_ < belongs * Worth || is_ * Worth > belongs;

    private static string Volts(double volts) => Engineering.Format(volts, "V", 2);
}
