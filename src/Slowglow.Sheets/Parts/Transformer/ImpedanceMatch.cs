using Slowglow.Quantities;

namespace Slowglow.Sheets.Parts.Transformer;

/// <summary>What an output transformer matches to what, ohms.</summary>
internal sealed record ImpedanceMatch(double Primary, double Secondary, bool IsRatioOnly)
{
    private const double UsualLoad = 8;

    internal static ImpedanceMatch OfRatio(double ratio) => new(UsualLoad * ratio * ratio, UsualLoad, true);

    /// <summary>Reads <c>5k:8</c> or <c>25:1</c>; null when the text is neither.</summary>
    internal static ImpedanceMatch? Read(string text)
    {
        var sides = text.Split(':', StringSplitOptions.TrimEntries);
        if (sides.Length == 1)
        {
            return QuantityText.TryRead(sides[0], Unit.None, out var only) && only.Value > 0 ? OfRatio(only.Value) : null;
        }

        if (
            sides.Length != 2
            || !QuantityText.TryRead(sides[0], Unit.Ohm, out var primary)
            || !QuantityText.TryRead(sides[1], Unit.Ohm, out var secondary)
            || !(primary.Value > 0)
            || !(secondary.Value > 0)
        )
        {
            return null;
        }

        // A figure of hundreds is an impedance even without its k: nobody winds 600:1 for a loudspeaker.
        var ohms = primary.Unit == Unit.Ohm || secondary.Unit == Unit.Ohm || primary.Value >= 300 || char.IsLetter(sides[0][^1]);
        return ohms ? new ImpedanceMatch(primary.Value, secondary.Value, false) : OfRatio(primary.Value / secondary.Value);
    }
}
