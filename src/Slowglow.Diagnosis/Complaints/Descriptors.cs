namespace Slowglow.Diagnosis.Complaints;

/// <summary>How descriptors are said, and which of them worlds can compute.</summary>
internal static class Descriptors
{
    public static string Say(Descriptor descriptor) =>
        descriptor switch
        {
            Descriptor.Rough => "rough early",
            Descriptor.BlowsFuse => "blows fuse",
            Descriptor.RedGlow => "red glow",
            Descriptor.NoPower => "no power",
            Descriptor.WhenWarm => "fails when warm",
            Descriptor.WhenCold => "fails when cold",
            Descriptor.HumAtMains => "hum at mains",
            Descriptor.Crossover => "rough when soft (crossover)",
            Descriptor.OneSided => "one-sided distortion",
            Descriptor.Buzz => "hum at twice mains",
            _ => descriptor.ToString().ToLowerInvariant(),
        };

    public static bool IsComputed(Descriptor descriptor) => descriptor <= Descriptor.Squeal;

    /// <summary>Computed from how a channel handles a signal.</summary>
    public static bool IsOfSignal(Descriptor descriptor) => descriptor <= Descriptor.Offset;
}
