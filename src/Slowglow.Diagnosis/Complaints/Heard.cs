using System.Globalization;

namespace Slowglow.Diagnosis.Complaints;

/// <summary>One thing the customer said.</summary>
/// <param name="Words">As said.</param>
/// <param name="Descriptor">How it is taken.</param>
/// <param name="Channel">Signal path it was said of, or null for the unit as a whole.</param>
/// <param name="Denied">True for "no hum".</param>
/// <param name="VolumeDown">True when it was said of the volume turned down.</param>
internal sealed record Heard(string Words, Descriptor Descriptor, string? Channel, bool Denied, bool VolumeDown)
{
    /// <summary>Controls of the sheet that it was said of, with their rotation, 0 to 1.</summary>
    public IReadOnlyDictionary<string, double> Controls { get; init; } = new Dictionary<string, double>();

    /// <summary>Equal for words said of the same setting of the controls.</summary>
    public string Condition =>
        (VolumeDown ? "down" : "")
        + string.Concat(Controls.OrderBy(c => c.Key, StringComparer.Ordinal).Select(c => $"|{c.Key}={Rotation(c.Value)}"));

    /// <summary>", with VOLUME1 up"; empty for the controls as they stand.</summary>
    public string Setting =>
        (VolumeDown ? ", with the volume down" : "")
        + string.Concat(Controls.Select(c => $", with {c.Key} {(c.Value > 0.9 ? "up" : c.Value < 0.1 ? "down" : "half way")}"));

    private static string Rotation(double value) => value.ToString(CultureInfo.InvariantCulture);
}
