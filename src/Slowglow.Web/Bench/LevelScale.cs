namespace Slowglow.Web.Bench;

/// <summary>Volts laid out in decibels over those of a milliwatt in 600 ohm (dBu), from one round figure to another.</summary>
public sealed class LevelScale
{
    private const double Step = 20;

    /// <summary>Rounding of the logarithm, in steps.</summary>
    private const double Slack = 1e-9;

    /// <summary>Below this a level is nothing that could be heard or drawn, dBu.</summary>
    private const double Floor = -140;
    private static readonly double Zero = Math.Sqrt(0.6);

    public LevelScale(IEnumerable<LevelMark> marks)
    {
        double[] levels = [.. marks.SelectMany(m => new[] { m.Now, m.Belongs }).Select(Decibels).Where(double.IsFinite)];
        From = levels.Length == 0 ? -Step : Step * Math.Floor((levels.Min() / Step) + Slack);
        To = levels.Length == 0 ? Step : Math.Max(From + Step, Step * Math.Ceiling((levels.Max() / Step) - Slack));
    }

    /// <summary>Ends of the scale, dBu, multiples of 20.</summary>
    public double From { get; }
    public double To { get; }

    /// <summary>Every 20 dB from end to end.</summary>
    public IEnumerable<double> Lines
    {
        get
        {
            for (var level = From; level <= To; level += Step)
            {
                yield return level;
            }
        }
    }

    /// <summary>0 at the lower end, 1 at the upper; null where there is no figure.</summary>
    public double? Share(double volts) =>
        Decibels(volts) is var level && double.IsFinite(level) ? (level - From) / (To - From) : null;

    /// <summary>dBu; NaN for no volts at all.</summary>
    private static double Decibels(double volts) => volts > 0 ? Math.Max(Floor, 20 * Math.Log10(volts / Zero)) : double.NaN;
}
