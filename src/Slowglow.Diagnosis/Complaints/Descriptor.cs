namespace Slowglow.Diagnosis.Complaints;

/// <summary>What a word of a complaint says of the sound or the unit.</summary>
internal enum Descriptor
{
    Fine,
    Quiet,
    Silent,
    Loud,
    Thin,
    Dull,
    Rough,
    Hum,
    Buzz,
    Offset,
    BlowsFuse,
    RedGlow,
    NoPower,
    Crackle,
    Intermittent,
    Noise,
    Motorboating,
    Hot,
    WhenWarm,
    Microphony,
}
