using Slowglow.Drawing.Grid;
using Slowglow.Sheets.Parts;

namespace Slowglow.Drawing.Symbols;

/// <summary>A section of a valve, transistor or op-amp.</summary>
internal abstract class ActiveSymbol : Symbol
{
    protected ActiveSymbol(Section section, string type)
        : base(section.Part, section.Name, [type]) => Section = section;

    public Section Section { get; }

    /// <summary>Nets that the section listens to.</summary>
    public IReadOnlyList<string> Inputs { get; protected init; } = [];

    /// <summary>Nets that the section drives.</summary>
    public IReadOnlyList<string> Outputs { get; protected init; } = [];
    public override bool IsActive => true;

    protected SymbolPin At(string electrode, int x, int y, Heading heading, bool numbered = true)
    {
        var pin = Section.Pins[electrode];
        return new(Section.PinName(electrode), pin.Net, new(x, y), heading, numbered ? pin.Number : "");
    }

    protected IReadOnlyList<string> Nets(params string[] electrodes) =>
        [.. electrodes.Where(Section.Pins.ContainsKey).Select(e => Section.Pins[e].Net)];
}
