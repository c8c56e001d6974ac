using Slowglow.Quantities;

namespace Slowglow.Diagnosis.Complaints;

/// <summary>Says how a channel of a world would sound, with the figure that a word of the complaint rests on.</summary>
internal static class SoundWords
{
    public static string Say(Heard word, string channel, Symptoms s)
    {
        var who = channel == "signal" ? "The output" : $"Channel {channel}";
        if (!s.Settled)
        {
            return $"{who} gives no figure";
        }
        return word.Descriptor switch
        {
            Descriptor.Quiet or Descriptor.Silent or Descriptor.Loud => $"{who} would be {Level(s.DropDb)}",
            Descriptor.Thin when s.BassDropDb > 3 => $"{who} would lose {Db(s.BassDropDb)} of bass",
            Descriptor.Thin => $"{who} would be {Level(s.DropDb)}",
            Descriptor.Dull => $"{who} would lose {Db(s.TrebleDropDb)} of treble",
            Descriptor.Rough or Descriptor.Crossover or Descriptor.OneSided =>
                $"{who} would distort {Percent(s.Distortion)} at half drive, where a healthy one distorts {Percent(s.HealthyDistortion)}",
            Descriptor.Hum or Descriptor.Buzz or Descriptor.HumAtMains => s.HumRiseDb < 1
                ? $"{who} would hum no more than a healthy one"
                : $"{who} would hum {Db(s.HumRiseDb)} above what is normal",
            Descriptor.Offset => $"{who} would hold {Engineering.Format(s.OffsetVolts, "V", 2)} of DC that does not belong there",
            _ => Fine(who, s),
        };
    }

    private static string Fine(string who, Symptoms s) =>
        Math.Abs(s.DropDb) < 2 ? $"{who} would keep its level" : $"{who} would be {Level(s.DropDb)}";

    private static string Level(double dropDb) =>
        dropDb > 50 ? "silent"
        : dropDb >= 0 ? $"{Db(dropDb)} down"
        : $"{Db(-dropDb)} up";

    private static string Db(double db) => Engineering.Format(Math.Round(Math.Abs(db), Math.Abs(db) < 3 ? 1 : 0), "dB", 3);

    private static string Percent(double share) =>
        double.IsNaN(share) ? "so much that no figure can be given" : Engineering.Format(100 * share, "%", 2);
}
