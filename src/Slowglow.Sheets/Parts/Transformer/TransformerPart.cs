namespace Slowglow.Sheets.Parts.Transformer;

/// <summary>Mains or output transformer. Pins: those of the windings, in order, each once.</summary>
public sealed record TransformerPart : Part
{
    public bool IsOutput { get; init; }

    /// <summary>Rated volt-amperes (mains) or watts (output); NaN when not given.</summary>
    public double Rating { get; init; } = double.NaN;

    /// <summary>Ohms that the whole primary of an output transformer shows with its rated load; NaN for mains transformers.</summary>
    public double PrimaryImpedance { get; init; } = double.NaN;

    /// <summary>Magnetising inductance of the whole primary of an output transformer, henries, &gt; 0; NaN for mains transformers.</summary>
    public double PrimaryHenries { get; init; } = double.NaN;

    /// <summary>Leakage inductance of an output transformer, seen from the whole primary, henries, &gt; 0; NaN for mains transformers.</summary>
    public double LeakageHenries { get; init; } = double.NaN;
    public required IReadOnlyList<Winding> Windings { get; init; }
}
