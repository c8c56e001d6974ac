namespace Slowglow.Sheets.Parts;

/// <summary>Electrode names of the first section go with and without the 1: "a" and "a1", "in+" and "in+1".</summary>
internal static class ElectrodeName
{
    internal static bool Matches(string electrode, string name) =>
        electrode.Length > 0
        && (
            name == electrode
            || (
                name.Length == electrode.Length + 1
                && name[^1] == '1'
                && !char.IsAsciiDigit(electrode[^1])
                && name.StartsWith(electrode, StringComparison.Ordinal)
            )
            || (
                electrode.Length == name.Length + 1
                && electrode[^1] == '1'
                && name.Length > 0
                && electrode.StartsWith(name, StringComparison.Ordinal)
            )
        );
}
