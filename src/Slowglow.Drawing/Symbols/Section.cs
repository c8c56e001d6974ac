using Slowglow.Sheets.Parts;

namespace Slowglow.Drawing.Symbols;

/// <summary>One section of a part: its number (1, 2 ...; 0 when the part has a single one) and its pins by electrode.</summary>
internal sealed record Section(Part Part, int Number, IReadOnlyDictionary<string, Pin> Pins)
{
    /// <summary>V1a, V1b ... as drawings letter them.</summary>
    public string Name => Number == 0 ? Part.Designator : Part.Designator + (char)('a' + Number - 1);

    /// <summary>True when nothing is connected to any of its pins.</summary>
    public bool IsUnused(IReadOnlyDictionary<string, int> ends) => Pins.Values.All(p => ends[p.Net] < 2);

    public string PinName(string electrode) => $"{Part.Designator}.{Pins[electrode].Number}";
}
