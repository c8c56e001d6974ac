using Slowglow.Quantities;

namespace Slowglow.Workshop.Stock;

/// <summary>A resistor or capacitor by the words on its bin: "22 nF 630 V film", "100 kohm 1 W metal film".</summary>
/// <param name="Value">Ohms or farads.</param>
/// <param name="Volts">Rated; NaN where the words say none.</param>
/// <param name="Watts">Rated; NaN where the words say none.</param>
public sealed record BinPart(Quantity Value, double Volts, double Watts)
{
    /// <summary>Null when the words name neither ohms nor farads.</summary>
    public static BinPart? Read(string words)
    {
        var said = Quantities(words).ToList();
        double Rated(Unit unit) => said.Where(q => q.Unit == unit).Select(q => q.Value).DefaultIfEmpty(double.NaN).First();
        return said.Where(q => q.Unit is Unit.Ohm or Unit.Farad)
            .Select(q => new BinPart(q, Rated(Unit.Volt), Rated(Unit.Watt)))
            .FirstOrDefault();
    }

    /// <summary>Figures with a unit, which may stand apart from its figure.</summary>
    private static IEnumerable<Quantity> Quantities(string words)
    {
        string[] all = [.. words.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(w => w.TrimEnd(',', ';'))];
        for (var i = 0; i < all.Length; i++)
        {
            var joined = i + 1 < all.Length && QuantityText.IsUnit(all[i + 1]) ? all[i] + all[i + 1] : all[i];
            if (QuantityText.TryRead(joined, out var quantity) && quantity.Unit != Unit.None)
            {
                yield return quantity;
            }
        }
    }
}
