using Slowglow.Sheets;

namespace Slowglow.Diagnosis.Complaints;

/// <summary>Finds the settings of controls that a clause speaks of: "treble up", "with the bass at zero", "turned up full".</summary>
internal sealed class ControlWords(IReadOnlyList<Control> controls)
{
    private static readonly HashSet<string> Up = ["up", "full", "max", "maximum", "fully", "flat-out", "ten"];
    private static readonly HashSet<string> Down = ["down", "zero", "off", "min", "minimum", "closed"];
    private static readonly HashSet<string> Volumes = ["volume", "vol", "gain", "level", "master", "fader"];

    /// <summary>Name of the control and its rotation; volumes turned down are taken by <see cref="Heard.VolumeDown"/>.</summary>
    public IReadOnlyDictionary<string, double> In(IReadOnlyList<string> words)
    {
        var found = new Dictionary<string, double>();
        if (RotationOf(words) is not { } rotation)
        {
            return found;
        }
        var turnedUp = rotation > 0.9 && (words.Contains("turned") || words.Any(Volumes.Contains));
        foreach (var control in controls)
        {
            var stem = new string([.. control.Name.ToLowerInvariant().TakeWhile(char.IsLetter)]);
            var isVolume = Volumes.Any(v => stem.StartsWith(v, StringComparison.Ordinal));
            if (isVolume ? turnedUp : stem.Length > 2 && words.Contains(stem))
            {
                found[control.Name] = rotation;
            }
        }
        return found;
    }

    private static double? RotationOf(IReadOnlyList<string> words) =>
        words.Any(Down.Contains) ? 0
        : words.Contains("half") ? 0.5
        : words.Any(Up.Contains) ? 1
        : null;
}
