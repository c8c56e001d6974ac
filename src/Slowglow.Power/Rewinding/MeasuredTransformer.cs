namespace Slowglow.Power.Rewinding;

/// <summary>What could still be measured on a transformer; all of it optional.</summary>
public sealed record MeasuredTransformer
{
    public static MeasuredTransformer Nothing { get; } = new();

    public Lamination? Core { get; init; }

    /// <summary>Millimetres; NaN = not measured.</summary>
    public double Stack { get; init; } = double.NaN;

    /// <summary>Ohms end to end at room temperature, by winding.</summary>
    public IReadOnlyDictionary<string, double> Ohms { get; init; } = new Dictionary<string, double>();

    /// <summary>Turns counted, by winding.</summary>
    public IReadOnlyDictionary<string, double> Turns { get; init; } = new Dictionary<string, double>();

    /// <summary>Diameter over the enamel, mm, by winding.</summary>
    public IReadOnlyDictionary<string, double> Wire { get; init; } = new Dictionary<string, double>();

    /// <summary>Volts of the first over volts of the second, by a low-voltage test with nothing drawn.</summary>
    public IReadOnlyList<MeasuredRatio> Ratios { get; init; } = [];

    /// <summary>Rms current of the primary with nothing drawn, at nominal mains; NaN = not measured.</summary>
    public double OffLoadAmps { get; init; } = double.NaN;

    /// <summary>The core, when it can be told; a square stack where only the size is known.</summary>
    public CoreStack? CoreStack => Core is null ? null : new CoreStack(Core, double.IsNaN(Stack) ? Core.Tongue : Stack);
}
