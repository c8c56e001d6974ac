namespace Slowglow.Diagnosis.Source;

/// <summary>Answers to a <see cref="Trait"/>; NaN for what was not asked or gives no figure.</summary>
internal readonly record struct SoundTraits()
{
    /// <summary>Hum at the mains frequency at the output, volts rms.</summary>
    public double MainVolts { get; init; } = double.NaN;

    /// <summary>Hum at twice the mains frequency, volts rms.</summary>
    public double TwiceVolts { get; init; } = double.NaN;

    /// <summary>Noise at the output, volts rms.</summary>
    public double NoiseVolts { get; init; } = double.NaN;

    /// <summary>Smallest |1 + loop gain| of any loop; infinity without one; 0 oscillates.</summary>
    public double ReturnDifference { get; init; } = double.NaN;

    /// <summary>Distortion 26 dB below the healthy clean limit, 0 to 1 and beyond.</summary>
    public double SoftDistortion { get; init; } = double.NaN;

    /// <summary>Distortion 6 dB below it.</summary>
    public double LoudDistortion { get; init; } = double.NaN;

    /// <summary>Share of the even harmonics in that, 0 to 1.</summary>
    public double EvenShare { get; init; } = double.NaN;
}
