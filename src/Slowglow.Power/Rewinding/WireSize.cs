using System.Globalization;

namespace Slowglow.Power.Rewinding;

/// <summary>Round enamelled winding wire.</summary>
/// <param name="BareMillimetres">Diameter of the copper, &gt; 0.</param>
public readonly record struct WireSize(double BareMillimetres)
{
    /// <summary>Thickest and thinnest number of the American gauge that winders stock for mains parts.</summary>
    private const int ThickestGauge = 10;
    private const int ThinnestGauge = 44;

    /// <summary>
    /// What the enamel adds: 0.094 mm on 1 mm of copper, with the 0.57 power of the diameter. Fitted to grade 2 of IEC 60317
    /// (reference/wire_enamelled_metric.csv).
    /// </summary>
    private const double EnamelOnOne = 0.094;
    private const double EnamelPower = 0.57;

    /// <summary>Diameters of the R20 series, 0.05 to 3.15 mm.</summary>
    private static readonly double[] Decade =
    [
        1.0,
        1.12,
        1.25,
        1.4,
        1.6,
        1.8,
        2.0,
        2.24,
        2.5,
        2.8,
        3.15,
        3.55,
        4.0,
        4.5,
        5.0,
        5.6,
        6.3,
        7.1,
        8.0,
        9.0,
    ];

    /// <summary>Metric sizes in order.</summary>
    public static IReadOnlyList<WireSize> Metric { get; } =
    [
        .. new[] { 0.01, 0.1, 1.0 }
            .SelectMany(scale => Decade.Select(d => Math.Round(d * scale, 3)))
            .Where(d => d is >= 0.05 and <= 3.15)
            .Select(d => new WireSize(d)),
    ];

    public double SquareMillimetres => Math.PI / 4 * BareMillimetres * BareMillimetres;

    /// <summary>Largest diameter with enamel (grade 2).</summary>
    public double OverallMillimetres => BareMillimetres + (EnamelOnOne * Math.Pow(BareMillimetres, EnamelPower));

    /// <summary>The nearest number of the American gauge: 0.127 mm is 36, each 39 steps are a factor of 92 (ASTM B258).</summary>
    public int NearestGauge =>
        (int)
            Math.Clamp(
                Math.Round(36 - (39 * Math.Log(BareMillimetres / 0.127) / Math.Log(92)), MidpointRounding.AwayFromZero),
                ThickestGauge,
                ThinnestGauge
            );

    /// <summary>A size of the American gauge.</summary>
    public static WireSize OfGauge(int gauge) => new(0.127 * Math.Pow(92, (36 - gauge) / 39.0));

    /// <summary>The metric size whose copper comes nearest to a section, mm².</summary>
    public static WireSize Nearest(double squareMillimetres) =>
        Metric.MinBy(w => Math.Abs(Math.Log(w.SquareMillimetres / squareMillimetres)));

    /// <summary>Copper of a wire measured over its enamel, mm.</summary>
    public static WireSize UnderEnamel(double overallMillimetres)
    {
        var bare = overallMillimetres;
        for (var k = 0; k < 20; k++)
        {
            bare = Math.Max(overallMillimetres - (EnamelOnOne * Math.Pow(bare, EnamelPower)), 0.2 * overallMillimetres);
        }

        return new WireSize(bare);
    }

    /// <summary>"0.315 mm (AWG 28)".</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{BareMillimetres:0.###} mm (AWG {NearestGauge})");
}
