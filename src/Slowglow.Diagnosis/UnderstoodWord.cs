namespace Slowglow.Diagnosis;

/// <summary>A word of the complaint and how it was taken.</summary>
/// <param name="Words">As the customer said it.</param>
/// <param name="Descriptor">quiet, silent, rough early, hum at mains, hum at twice mains, offset ...; empty when not understood.</param>
/// <param name="Channel">Channel it was said of, or null.</param>
/// <param name="Computed">True when worlds compute it; false when a stated common-practice weight is used.</param>
public sealed record UnderstoodWord(string Words, string Descriptor, string? Channel, bool Computed);
