using Slowglow.Drawing.Grid;
using Slowglow.Sheets.Parts;

namespace Slowglow.Drawing.Symbols;

/// <summary>What is drawn of a part, or of one section of it: its strokes, its pins and its words, standing upright about (0, 0).</summary>
internal abstract class Symbol
{
    protected Symbol(Part? part, string name, IReadOnlyList<string> words)
    {
        Part = part;
        Name = name;
        Words = [.. new[] { name }.Concat(words).Where(w => w.Length > 0)];
    }

    /// <summary>Null for what the sheet implies without listing it: the inlet, a flag, a figure.</summary>
    public Part? Part { get; }

    /// <summary>Designator, with the section's letter where there are several.</summary>
    public string Name { get; }

    /// <summary>Lines beside the symbol, the name first.</summary>
    public IReadOnlyList<string> Words { get; protected init; }

    public IReadOnlyList<SymbolPin> Pins { get; protected init; } = [];

    /// <summary>Grid crossings that no wire may use.</summary>
    public Rect Body { get; protected init; }
    public IReadOnlyList<Stroke> Strokes { get; protected init; } = [];
    public Turning Turning { get; protected init; } = Turning.Fixed;
    public LabelSide Label { get; protected init; } = LabelSide.Beside;

    /// <summary>An amplifying section, by which stages are told apart.</summary>
    public virtual bool IsActive => false;

    /// <summary>Two pins in line, so that it can lie or stand.</summary>
    public bool IsTwoEnded => Turning == Turning.Quarter && Pins.Count == 2;

    /// <summary>The body as it lies in a pose.</summary>
    public virtual Rect BodyIn(Pose pose) => pose.Apply(Body);

    public override string ToString() => Name;
}
