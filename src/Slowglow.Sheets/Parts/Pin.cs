namespace Slowglow.Sheets.Parts;

/// <summary>An end of a part.</summary>
/// <param name="Number">As printed on the base or package, or the winding's pin: "7", "1".</param>
/// <param name="Electrode">What is behind it: "a2", "k", "c", "out", "in+"; empty when it has no name of its own.</param>
/// <param name="Net">Canonical net. A pin that the sheet leaves unconnected is on a net of its own, named PART.NUMBER.</param>
public sealed record Pin(string Number, string Electrode, string Net)
{
    /// <summary>True for its number and its electrode; the first section goes with and without the 1 ("a", "a1").</summary>
    public bool Is(string name) => name == Number || ElectrodeName.Matches(Electrode, name);
}
