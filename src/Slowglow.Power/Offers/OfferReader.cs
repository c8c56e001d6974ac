using System.Globalization;
using System.Text;
using Slowglow.Quantities;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Power.Offers;

/// <summary>
/// Reads an offer said in one line: <c>new toroid: 230V; 250V 120mA; 6.3V 3A; 60VA; price 45; freight 9; tax 20%; weeks 2; fixing one bolt; size 96x80x75mm; holes 80x64mm</c>.
/// The first volts are the primary (<c>2x115V</c> for two), every further one is a secondary (<c>15-0-15V 0.5A</c>).
/// </summary>
public static class OfferReader
{
    private const string Example = "write new toroid: 230V; 250V 120mA; 6.3V 3A; price 45; freight 9; tax 20%; weeks 2";

    public static Parsed<TransformerOffer> Read(string line, double hertz)
    {
        var colon = line.IndexOf(':', StringComparison.Ordinal);
        if (colon < 1)
        {
            return Wrong(line, "it has no name", Example);
        }

        var name = line[..colon].Trim();
        Dictionary<string, string> said = new(StringComparer.OrdinalIgnoreCase);
        List<string> windings = [];
        var rating = double.NaN;
        foreach (
            var piece in line[(colon + 1)..].Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
        )
        {
            var words = piece.Split(' ', 2, StringSplitOptions.TrimEntries);
            if (
                words.Length == 2
                && words[0].ToLowerInvariant() is "price" or "freight" or "tax" or "weeks" or "fixing" or "size" or "holes"
            )
            {
                said[words[0]] = words[1];
            }
            else if (QuantityText.TryRead(piece, out var only) && only.Unit == Unit.VoltAmpere)
            {
                rating = only.Value;
            }
            else
            {
                windings.Add(piece);
            }
        }

        return windings.Count < 2
            ? Wrong(line, "it needs the volts of its primary and of at least one secondary", Example)
            : Build(line, name, windings, rating, said, hertz);
    }

    private static Parsed<TransformerOffer> Build(
        string line,
        string name,
        List<string> windings,
        double rating,
        Dictionary<string, string> said,
        double hertz
    )
    {
        if (Transformer(windings, rating, hertz) is not { } part)
        {
            return Wrong(line, "its windings cannot be read", Example);
        }

        if (
            !Money(said, "price", out var price)
            || !Money(said, "freight", out var freight)
            || !Number(said, "weeks", out var weeks)
            || !Share(said, out var tax)
        )
        {
            return Wrong(line, "price, freight, tax and weeks are plain figures, none below zero", Example);
        }

        return BodyReader.Of(said.GetValueOrDefault("size", ""), said.GetValueOrDefault("holes", "")) is { } body
            ? new(new(name, part, rating, price, freight ?? 0, tax, weeks, said.GetValueOrDefault("fixing", ""), body), [])
            : Wrong(line, "its size or holes cannot be read", "write size 96x80x75mm; holes 80x64mm");
    }

    /// <summary>Read as a sheet would read it, so that what is not said is assumed in the same way.</summary>
    private static TransformerPart? Transformer(List<string> windings, double rating, double hertz)
    {
        var text = new StringBuilder("sheet: 1\nunit: offer\n");
        text.Append(CultureInfo.InvariantCulture, $"mains: {{ volts: 230 V, frequency: {hertz} Hz }}\nparts:\n  T1:\n");
        text.Append(
            double.IsNaN(rating)
                ? "    is: transformer\n"
                : string.Create(CultureInfo.InvariantCulture, $"    is: transformer {rating} VA\n")
        );
        text.Append("    windings:\n");
        var shared = SharedAmps(windings, rating);
        var pin = 1;
        for (var w = 0; w < windings.Count; w++)
        {
            var words = windings[w].Split(' ', StringSplitOptions.RemoveEmptyEntries);
            var (times, volts) = Times(words[0]);
            var taps = volts.Split('-').Length;
            for (var k = 0; k < times; k++)
            {
                var pins = string.Join('-', Enumerable.Range(pin, Math.Max(2, taps)));
                pin += Math.Max(2, taps);
                var amps =
                    words.Length > 1 ? $", amps: {string.Concat(words.Skip(1))}"
                    : w > 0 ? shared
                    : "";
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"      {(w == 0 ? "P" : "S")}{w}{(char)('a' + k)}: {{ pins: {pins}, volts: {volts}{amps} }}\n"
                );
            }
        }

        text.Append("  R1: 1k T1.1 -> GND\n");
        var read = SheetReader.Read(text.ToString());
        return read.HasErrors ? null : read.Value?.Parts.OfType<TransformerPart>().FirstOrDefault();
    }

    /// <summary>Where only the whole rating is said, every secondary carries the same current: 2x115V at 30 VA are 0.13 A.</summary>
    private static string SharedAmps(List<string> windings, double rating)
    {
        if (double.IsNaN(rating) || windings.Skip(1).Any(w => w.Contains(' ')))
        {
            return "";
        }

        var total = windings
            .Skip(1)
            .Select(Times)
            .Sum(t => t.Times * t.Volts.Split('-').Sum(v => QuantityText.TryRead(v, Unit.Volt, out var volts) ? volts.Value : 0));
        return total > 0 ? string.Create(CultureInfo.InvariantCulture, $", amps: {rating / total:0.####} A") : "";
    }

    private static (int Times, string Volts) Times(string text)
    {
        var x = text.IndexOf('x', StringComparison.OrdinalIgnoreCase);
        return x > 0 && int.TryParse(text[..x], out var times) && times is > 0 and < 5 ? (times, text[(x + 1)..]) : (1, text);
    }

    private static bool Money(Dictionary<string, string> said, string key, out decimal? money)
    {
        money = null;
        if (!said.TryGetValue(key, out var text))
        {
            return true;
        }

        var read = decimal.TryParse(text, NumberStyles.Number, CultureInfo.InvariantCulture, out var figure) && figure >= 0;
        money = read ? figure : null;
        return read;
    }

    private static bool Number(Dictionary<string, string> said, string key, out double number)
    {
        number = double.NaN;
        return !said.TryGetValue(key, out var text)
            || (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out number) && number >= 0);
    }

    private static bool Share(Dictionary<string, string> said, out decimal share)
    {
        share = 0;
        if (!said.TryGetValue("tax", out var text))
        {
            return true;
        }

        if (!QuantityText.TryRead(text, Unit.Percent, out var quantity) || quantity.Value is < 0 or > 100)
        {
            return false;
        }

        share = (decimal)(quantity.Unit == Unit.Percent ? quantity.Value : quantity.Value / 100);
        return true;
    }

    private static Parsed<TransformerOffer> Wrong(string line, string text, string remedy) =>
        new(null, [new(Severity.Error, Place.None, $"offer \"{line}\": {text}", remedy)]);
}
