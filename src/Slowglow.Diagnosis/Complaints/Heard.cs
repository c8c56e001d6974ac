namespace Slowglow.Diagnosis.Complaints;

/// <summary>One thing the customer said.</summary>
/// <param name="Words">As said.</param>
/// <param name="Descriptor">How it is taken.</param>
/// <param name="Channel">Signal path it was said of, or null for the unit as a whole.</param>
/// <param name="Denied">True for "no hum".</param>
/// <param name="VolumeDown">True when it was said of the volume turned down.</param>
internal sealed record Heard(string Words, Descriptor Descriptor, string? Channel, bool Denied, bool VolumeDown);
