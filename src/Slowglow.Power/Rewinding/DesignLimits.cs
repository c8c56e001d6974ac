namespace Slowglow.Power.Rewinding;

/// <summary>What a design must keep to. Figures without a source named are common practice, no source.</summary>
public sealed record DesignLimits
{
    public Steel Steel { get; init; } = Steel.Good;

    /// <summary>Flux density at nominal mains, tesla; null = what suits the steel.</summary>
    public double? Tesla { get; init; }

    /// <summary>Current density, A/mm²; null = as low as the window allows.</summary>
    public double? Density { get; init; }

    /// <summary>Thicker wire than this is not worth winding, A/mm².</summary>
    public double LeastDensity { get; init; } = 1.8;

    /// <summary>Thinner wire runs too hot, A/mm² (reference/transformer_rules.csv: 2.2 to 3.5 in practice).</summary>
    public double MostDensity { get; init; } = 3.5;

    /// <summary>Drop of any secondary from no load to full load, over the loaded volts.</summary>
    public double MostRegulation { get; init; } = 0.25;

    /// <summary>A whole number of turns misses the volts by at most this share.</summary>
    public double MostVoltsError { get; init; } = 0.02;

    public InsulationClass Class { get; init; } = InsulationClass.Named("B")!;

    /// <summary>Air inside the unit, degrees.</summary>
    public double Ambient { get; init; } = 40;
}
