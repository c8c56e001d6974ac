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
    HumAtMains,
    Crossover,
    OneSided,
    Offset,
    BlowsFuse,
    RedGlow,
    Smoke,
    NoPower,
    Noise,
    Squeal,
    Crackle,
    Intermittent,
    Motorboating,
    Hot,
    WhenWarm,
    WhenCold,
    Microphony,
}
