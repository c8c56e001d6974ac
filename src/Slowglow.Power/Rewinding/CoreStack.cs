using System.Globalization;

namespace Slowglow.Power.Rewinding;

/// <summary>Laminations stacked to a core.</summary>
/// <param name="Lamination">Size.</param>
/// <param name="Stack">Height of the stack, mm, &gt; 0.</param>
/// <param name="Filling">Share of the stack that is iron, 0.8 to 1. Published design examples take it whole.</param>
public sealed record CoreStack(Lamination Lamination, double Stack, double Filling = CoreStack.UsualFilling)
{
    /// <summary>5 % goes for scale and varnish (reference/transformer_rules.csv).</summary>
    public const double UsualFilling = 0.95;

    /// <summary>Kilograms per cubic metre of silicon steel (common practice, no source).</summary>
    private const double Density = 7650;

    /// <summary>Every size in a square stack and in one half as high again, by weight.</summary>
    public static IReadOnlyList<CoreStack> Standard { get; } =
    [
        .. Lamination
            .All.SelectMany(l => new[] { 1.0, 1.5 }.Select(h => new CoreStack(l, Math.Round(h * l.Tongue))))
            .OrderBy(c => c.Kilograms),
    ];

    /// <summary>Iron in the tongue, m².</summary>
    public double SquareMetres => Lamination.Tongue * Stack * Filling * 1e-6;

    public double Kilograms => Lamination.Face * Stack * Filling * 1e-9 * Density;

    /// <summary>Turns for each volt rms at a flux density (tesla) and frequency (hertz): E = 4.44 f N B A.</summary>
    public double TurnsPerVolt(double tesla, double hertz) => 1 / (Math.Sqrt(2) * Math.PI * hertz * tesla * SquareMetres);

    /// <summary>Flux density, tesla, with so many volts on each turn.</summary>
    public double Tesla(double voltsPerTurn, double hertz) => voltsPerTurn / (Math.Sqrt(2) * Math.PI * hertz * SquareMetres);

    /// <summary>
    /// Surface that air can reach, m²: the block of iron but for the side it stands on, and the two ends of the coil, which stand out by
    /// the window's width.
    /// </summary>
    public double CooledSquareMetres
    {
        get
        {
            var (w, h) = (Lamination.OutlineWidth, Lamination.OutlineHeight);
            var block = (2 * w * h) + (w * Stack) + (2 * h * Stack);
            var ends = 4 * Lamination.WindowWidth * (2 * Lamination.Tongue + Lamination.WindowHeight);
            return (block + ends) * 1e-6;
        }
    }

    /// <summary>"EI96, stack 45 mm".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Lamination.Name}, stack {Stack:0.#} mm");
}
