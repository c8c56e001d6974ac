using Slowglow.Circuits;

namespace Slowglow.Bench.Rehearsals;

/// <summary>
/// Somebody who brings a unit in: with ears of their own, and not telling everything. Around 6 dB of level, 8 % and thrice the healthy
/// distortion, 12 dB of hum and 0.5 V of DC at the output they begin to mind, each by its own factor (standard deviation 35 %). What is worst
/// they always name; distortion, hum and DC beside it not always. Common practice, no source.
/// </summary>
internal sealed class Customer
{
    private const double EarSpread = 0.35;
    private const double SilentDb = 30;

    /// <summary>Hum this far below the output at drive is not heard.</summary>
    private const double Inaudible = 3e-4;

    private readonly double quietDb;
    private readonly double rough;
    private readonly double timesHealthy;
    private readonly double humDb;
    private readonly double offsetVolts;
    private readonly bool namesRoughness;
    private readonly bool namesHum;
    private readonly bool namesOffset;

    /// <summary>A customer drawn by chance.</summary>
    public Customer(Random random)
    {
        quietDb = 6 * random.Factor(EarSpread);
        rough = 0.08 * random.Factor(EarSpread);
        timesHealthy = Math.Max(1.5, 3 * random.Factor(EarSpread));
        humDb = 12 * random.Factor(EarSpread);
        offsetVolts = 0.5 * random.Factor(EarSpread);
        namesRoughness = random.NextDouble() < 0.6;
        namesHum = random.NextDouble() < 0.7;
        namesOffset = random.NextDouble() < 0.5;
    }

    /// <summary>Words for what a channel does that it did not do when the unit was sold; none when it is fine.</summary>
    public IReadOnlyList<string> SaysOf(SignalReport good, SignalReport bad)
    {
        var words = new List<string>();
        var drop = Db(good.LevelVolts, Math.Max(Math.Abs(bad.LevelVolts), 1e-9));
        if (Math.Abs(drop) > quietDb)
        {
            words.Add(
                drop > SilentDb ? "silent"
                : drop > 0 ? "quiet"
                : "too loud"
            );
        }
        var isRough = drop < SilentDb && bad.DistortionAtDrive > Math.Max(rough, timesHealthy * good.DistortionAtDrive);
        Add(words, isRough, "distorted", namesRoughness);
        var hum = Db(bad.HumVolts, Math.Max(Math.Abs(good.HumVolts), Inaudible * good.OutputAtDrive));
        Add(words, hum > humDb, "hums", namesHum);
        Add(words, Math.Abs(bad.OffsetVolts - good.OffsetVolts) > offsetVolts, "DC on the output", namesOffset);
        return words;
    }

    private static void Add(List<string> words, bool isSo, string word, bool isNamedBesideWorse)
    {
        if (isSo && (words.Count == 0 || isNamedBesideWorse))
        {
            words.Add(word);
        }
    }

    private static double Db(double a, double b) => 20 * Math.Log10(Math.Abs(a) / b);
}
