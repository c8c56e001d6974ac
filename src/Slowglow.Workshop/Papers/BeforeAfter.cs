namespace Slowglow.Workshop.Papers;

/// <param name="Where">Point and kind: "V1.6, DC".</param>
/// <param name="Before">With its unit; empty when not taken.</param>
/// <param name="After">With its unit; empty when not taken.</param>
/// <param name="Belongs">What a healthy unit reads there; empty when nobody worked it out.</param>
public sealed record BeforeAfter(string Where, string Before, string After, string Belongs = "");
