using System.Globalization;

namespace Slowglow.Workshop.Money;

/// <summary>Money: a decimal figure and its currency.</summary>
/// <param name="Figure">In whole units of the currency.</param>
/// <param name="Currency">Three capitals of ISO 4217: EUR, GBP, USD.</param>
public sealed record Amount(decimal Figure, string Currency)
{
    public static Amount Zero(string currency) => new(0, currency);

    /// <summary>Of one currency: money is never added across currencies without a rate.</summary>
    public static Amount operator +(Amount left, Amount right) => left with { Figure = left.Figure + right.In(left.Currency) };

    public static Amount operator -(Amount left, Amount right) => left with { Figure = left.Figure - right.In(left.Currency) };

    /// <summary>To what can be paid; halves away from zero.</summary>
    public Amount Rounded() => this with { Figure = Currencies.Round(Figure, Currency) };

    /// <summary>"200.00 EUR".</summary>
    public override string ToString() =>
        Figure.ToString("F" + Currencies.Decimals(Currency).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
        + " "
        + Currency;

    /// <summary>Reads "200 EUR" or "EUR 200"; null when it is neither.</summary>
    public static Amount? Read(string text)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (words.Length != 2)
        {
            return null;
        }

        var (figure, currency) = Currencies.IsCode(words[0]) ? (words[1], words[0]) : (words[0], words[1]);
        return
            Currencies.IsCode(currency)
            && decimal.TryParse(figure, NumberStyles.Number, CultureInfo.InvariantCulture, out var value)
            ? new Amount(value, currency)
            : null;
    }

    private decimal In(string currency) =>
        Currency == currency
            ? Figure
            : throw new InvalidOperationException($"{Currency} and {currency} cannot be added without a rate.");
}
