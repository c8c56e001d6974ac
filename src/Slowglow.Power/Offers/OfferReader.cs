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
    private const string Windings =
        "write the volts of each winding and, where known, its amperes, the primary first: 230V; 250V 120mA; 6.3V 3A";
    private const string Named = "begin with a name and a colon: new toroid: 230V; 250V 120mA; 6.3V 3A; price 45; weeks 2";
    private const string Figure = "a plain figure, none below zero";

    public static Parsed<TransformerOffer> Read(string line, double hertz)
    {
        var colon = line.IndexOf(':', StringComparison.Ordinal);
        if (colon < 1)
        {
            return new(null, [Wrong(line, "it has no name", Named)]);
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

        return Build(name, windings, rating, said, hertz);
    }

    /// <summary>Everything that is wrong with it at once: each is in a place of its own on the page.</summary>
    private static Parsed<TransformerOffer> Build(
        string name,
        List<string> windings,
        double rating,
        Dictionary<string, string> said,
        double hertz
    )
    {
        List<Finding> wrong = [];
        var part = windings.Count < 2 ? null : Transformer(windings, rating, hertz);
        if (windings.Count < 2)
        {
            wrong.Add(Wrong(name, "it needs the volts of its primary and of at least one secondary", Windings));
        }
        else if (part is null)
        {
            wrong.Add(Wrong(name, Unreadable(windings, hertz), Windings));
        }

        var price = Money(name, said, "price", wrong);
        var freight = Money(name, said, "freight", wrong);
        var weeks = Number(name, said, "weeks", wrong);
        var tax = Share(name, said, wrong);
        var body = BodyReader.Of(said.GetValueOrDefault("size", ""), said.GetValueOrDefault("holes", ""));
        if (body is null)
        {
            wrong.Add(Wrong(name, "its size or holes cannot be read", "write size 96x80x75mm; holes 80x64mm"));
        }

        return wrong.Count > 0
            ? new(null, wrong)
            : new(new(name, part!, rating, price, freight ?? 0, tax, weeks, said.GetValueOrDefault("fixing", ""), body!), []);
    }

    private static string Unreadable(List<string> windings, double hertz) =>
        windings.FirstOrDefault(w => Transformer([w, "6.3V 1A"], double.NaN, hertz) is null) is { } which
            ? $"its winding \"{which}\" cannot be read"
            : "its windings cannot be read together";

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

    private static decimal? Money(string name, Dictionary<string, string> said, string key, List<Finding> wrong)
    {
        if (!said.TryGetValue(key, out var text))
        {
            return null;
        }

        if (decimal.TryParse(text, NumberStyles.Number, CultureInfo.InvariantCulture, out var figure) && figure >= 0)
        {
            return figure;
        }

        wrong.Add(Wrong(name, $"its {key} \"{text}\" is no figure that can be", Figure));
        return null;
    }

    private static double Number(string name, Dictionary<string, string> said, string key, List<Finding> wrong)
    {
        if (!said.TryGetValue(key, out var text))
        {
            return double.NaN;
        }

        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && number >= 0)
        {
            return number;
        }

        wrong.Add(Wrong(name, $"its {key} \"{text}\" are no figure that can be", Figure));
        return double.NaN;
    }

    private static decimal Share(string name, Dictionary<string, string> said, List<Finding> wrong)
    {
        if (!said.TryGetValue("tax", out var text))
        {
            return 0;
        }

        if (QuantityText.TryRead(text, Unit.Percent, out var quantity))
        {
            var share = quantity.Unit == Unit.Percent ? quantity.Value : quantity.Value / 100;
            if (share is >= 0 and <= 1)
            {
                return (decimal)share;
            }
        }

        wrong.Add(Wrong(name, $"its tax \"{text}\" is no figure that can be", "a percentage from 0 to 100: 20%"));
        return 0;
    }

    private static Finding Wrong(string offer, string text, string remedy) =>
        new(Severity.Error, Place.None, $"offer \"{offer}\": {text}", remedy);
}
