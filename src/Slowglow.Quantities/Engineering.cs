using System.Globalization;

namespace Slowglow.Quantities;

/// <summary>Engineering notation for people: 181 V, 1.2 mA, 4.7 kohm.</summary>
public static class Engineering
{
    /// <summary>Formats a value in engineering form with a sensible number of digits.</summary>
    public static string Format(double value, string unit, int digits = 3)
    {
        return value.ToString("G" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) + " " + unit;
    }
}
