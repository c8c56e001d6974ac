namespace Slowglow.Circuits;

/// <summary>A part that stands more than it is rated for.</summary>
/// <param name="Part">Designator.</param>
/// <param name="Quantity">"W", "V" or "A".</param>
/// <param name="Value">What it stands.</param>
/// <param name="Ratio">Over its rating, above 1.</param>
/// <param name="Words">"R5 turns 1.4 W into heat, 2.8 times its rating".</param>
public sealed record OverRating(string Part, string Quantity, double Value, double Ratio, string Words);
