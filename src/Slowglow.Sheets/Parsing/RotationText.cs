using Slowglow.Quantities;

namespace Slowglow.Sheets.Parsing;

/// <summary>Reads the rotation of a control: <c>50 %</c>, or a fraction 0 to 1.</summary>
internal static class RotationText
{
    internal static bool TryRead(string text, out double rotation)
    {
        rotation = text.ToLowerInvariant() switch
        {
            "full" or "max" => 1,
            "half" or "middle" => 0.5,
            "zero" or "min" or "off" => 0,
            _ => double.NaN,
        };
        if (double.IsNaN(rotation) && QuantityText.TryRead(text, Unit.Percent, out var figure))
        {
            rotation = figure.Value;
        }

        return rotation is >= 0 and <= 1;
    }
}
