using System.Collections.Frozen;

namespace Slowglow.Workshop.Money;

/// <summary>How many decimals a currency is paid in (minor unit of ISO 4217; from memory, every other currency has two).</summary>
public static class Currencies
{
    private static readonly FrozenDictionary<string, int> Other = new Dictionary<string, int>
    {
        ["JPY"] = 0,
        ["KRW"] = 0,
        ["ISK"] = 0,
        ["CLP"] = 0,
        ["VND"] = 0,
        ["BHD"] = 3,
        ["KWD"] = 3,
        ["OMR"] = 3,
        ["TND"] = 3,
        ["JOD"] = 3,
    }.ToFrozenDictionary();

    public static int Decimals(string currency) => Other.GetValueOrDefault(currency, 2);

    /// <summary>To what can be paid; halves away from zero, as on a till.</summary>
    public static decimal Round(decimal figure, string currency) =>
        decimal.Round(figure, Decimals(currency), MidpointRounding.AwayFromZero);

    public static bool IsCode(string text) => text.Length == 3 && text.All(char.IsAsciiLetterUpper);
}
