namespace Slowglow.Browser.Tests.Browsing;

/// <summary>Points of the demo combo that the tests measure at.</summary>
internal static class Combo
{
    /// <summary>Anode of the first channel's first valve.</summary>
    public const string Anode = "V1.6";

    /// <summary>Its cathode.</summary>
    public const string Cathode = "V1.8";
}
