using System.Globalization;

namespace Slowglow.Workshop.Money;

/// <summary>Money: a decimal figure and its currency.</summary>
/// <param name="Figure">In whole units of the currency.</param>
/// <param name="Currency">Three capitals of ISO 4217: EUR, GBP, USD.</param>
public sealed record Amount(decimal Figure, string Currency)
{
    /// <summary>"200.00 EUR".</summary>
    public override string ToString() => Figure.ToString("0.00", CultureInfo.InvariantCulture) + " " + Currency;

    /// <summary>Reads "200 EUR" or "EUR 200"; null when it is neither.</summary>
    public static Amount? Read(string text)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (words.Length != 2)
        {
            return null;
        }

        var (figure, currency) = IsCurrency(words[0]) ? (words[1], words[0]) : (words[0], words[1]);
        return IsCurrency(currency) && decimal.TryParse(figure, NumberStyles.Number, CultureInfo.InvariantCulture, out var value)
            ? new Amount(value, currency)
            : null;
    }

    private static bool IsCurrency(string word) => word.Length == 3 && word.All(char.IsAsciiLetterUpper);
}
