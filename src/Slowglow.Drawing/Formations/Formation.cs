using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Formations;

/// <summary>Symbols that always stand to each other in the same way, placed as if they were one.</summary>
internal sealed class Formation : Symbol
{
    public Formation(IReadOnlyList<Symbol> members)
        : base(null, string.Join(' ', members.Select(m => m.Name)), [])
    {
        Members = members;
        Pins = [.. Members.SelectMany(m => m.Pins)];
    }

    public IReadOnlyList<Symbol> Members { get; }
    public override bool IsActive => true;
}
