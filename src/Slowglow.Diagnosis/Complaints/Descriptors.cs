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
            Descriptor.Buzz => "hum at twice mains",
            _ => descriptor.ToString().ToLowerInvariant(),
        };

    public static bool IsComputed(Descriptor descriptor) => descriptor <= Descriptor.RedGlow;

    /// <summary>Computed from how a channel handles a signal.</summary>
    public static bool IsOfSignal(Descriptor descriptor) => descriptor <= Descriptor.Offset;
}
