namespace Slowglow.Diagnosis.Source;

/// <summary>What of a sound is asked for beyond level, distortion and hum; each costs a question to every world.</summary>
internal enum Trait
{
    /// <summary>Hum taken apart into mains and twice mains.</summary>
    HumTones,

    /// <summary>Noise, 20 Hz to 20 kHz.</summary>
    Noise,

    /// <summary>Feedback loops near to oscillating.</summary>
    Loop,

    /// <summary>Distortion at a soft signal, and whether it is one-sided at a loud one.</summary>
    Shape,
}
