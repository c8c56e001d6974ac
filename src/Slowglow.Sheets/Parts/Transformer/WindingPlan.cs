namespace Slowglow.Sheets.Parts.Transformer;

/// <summary>A winding while it is read: what the sheet says, before anything is estimated.</summary>
internal sealed class WindingPlan
{
    internal required string Name { get; init; }
    internal required Place Place { get; init; }
    internal required bool IsPrimary { get; init; }
    internal IReadOnlyList<string> Pins { get; set; } = [];

    /// <summary>Volts rms of each section as printed, or relative turns of an output transformer; empty when not said.</summary>
    internal IReadOnlyList<double> Sections { get; set; } = [];

    /// <summary>True when <see cref="Sections"/> only says where the taps are, not how many turns there are in all.</summary>
    internal bool IsShapeOnly { get; set; }
    internal double Amps { get; set; } = double.NaN;

    /// <summary>Copper end to end; NaN when not said.</summary>
    internal double Ohms { get; set; } = double.NaN;
    internal double Volts => Sections.Sum();

    /// <summary>Copper split by volts.</summary>
    internal IReadOnlyList<double> SectionOhms => [.. Sections.Select(v => Ohms * v / Volts)];

    internal Winding Finish(double raise) => new(Name, Pins, [.. Sections.Select(v => v * raise)], SectionOhms, Amps, IsPrimary);
}
