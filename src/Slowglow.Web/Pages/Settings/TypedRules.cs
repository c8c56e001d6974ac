using System.Globalization;
using Slowglow.Sheets;
using Slowglow.Workshop.Labour;
using Slowglow.Workshop.Money;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Pricing;
using Slowglow.Workshop.Shop;

namespace Slowglow.Web.Pages.Settings;

/// <summary>The shop's rules while they are being typed.</summary>
public sealed class TypedRules
{
    private static readonly CultureInfo Inv = CultureInfo.InvariantCulture;
    private TypedFields fields = new();

    public string Name { get; set; } = "";
    public string Address { get; set; } = "";
    public string Contact { get; set; } = "";
    public string TaxNumber { get; set; } = "";
    public string Currency { get; set; } = "";
    public string Taxes { get; set; } = "";
    public string UsualTax { get; set; } = "";
    public bool PricesIncludeTax { get; set; }
    public bool PerLine { get; set; }
    public string Labour { get; set; } = "";
    public string Step { get; set; } = "";
    public string Least { get; set; } = "";
    public string Markup { get; set; } = "";
    public string LeastMarkup { get; set; } = "";
    public string RoundUpTo { get; set; } = "";
    public string BenchFee { get; set; } = "";
    public string SafetySet { get; set; } = "";
    public string CounterTerms { get; set; } = "";
    public string InvoiceTerms { get; set; } = "";
    public string LabelAddress { get; set; } = "";
    public string DayShape { get; set; } = "";
    public string NumberShape { get; set; } = "";
    public string Mains { get; set; } = "";
    public bool ZigzagResistors { get; set; }
    public TypedWaiting Waiting { get; private init; } = new();

    public static TypedRules Of(ShopRules rules) =>
        new()
        {
            Name = rules.Party.Name,
            Address = rules.Party.Address,
            Contact = rules.Party.Contact,
            TaxNumber = rules.Party.TaxNumber,
            Currency = rules.Currency,
            Taxes = string.Join('\n', rules.Taxes.Rates.Select(r => $"{r.Name} {Say(r.Percent)} {r.From:yyyy-MM-dd}")),
            UsualTax = rules.UsualTax,
            PricesIncludeTax = rules.Pricing.PricesIncludeTax,
            PerLine = rules.Pricing.Rounding == TaxRounding.PerLine,
            Labour = string.Join('\n', rules.Labour.Select(l => $"{l.Name} {Say(l.PerHour)}")),
            Step = Say(rules.Hours.Step),
            Least = Say(rules.Hours.Least),
            Markup = string.Join(
                '\n',
                rules.Markup.Steps.Select(s => $"{(s.UpTo is { } up ? Say(up) : "above")} {Say(s.Percent)}")
            ),
            BenchFee = Say(rules.BenchFee),
            LeastMarkup = Say(rules.Markup.Least),
            RoundUpTo = Say(rules.Markup.RoundUpTo),
            SafetySet = rules.SafetySet,
            CounterTerms = rules.CounterTerms,
            InvoiceTerms = rules.InvoiceTerms,
            LabelAddress = rules.LabelAddress,
            DayShape = rules.Papers.DayShape,
            NumberShape = rules.Papers.NumberShape,
            Mains = rules.MainsVolts.ToString("0.#", Inv),
            ZigzagResistors = rules.ZigzagResistors,
            Waiting = TypedWaiting.Of(rules),
        };

    /// <summary>Value null when a line or a figure cannot be read.</summary>
    /// <param name="basis">What holds now: it keeps what is not typed here.</param>
    public Parsed<ShopRules> Read(ShopRules basis)
    {
        fields = new();
        var rules = Waiting.Read(basis, fields) with
        {
            Party = new Party(Name.Trim(), Address.Trim(), Contact.Trim(), TaxNumber.Trim(), basis.Party.Logo),
            Pricing = new(
                Currency.Trim().ToUpperInvariant(),
                PricesIncludeTax,
                PerLine ? TaxRounding.PerLine : TaxRounding.PerDocument
            ),
            Taxes = new([.. Lines(Taxes).Select(Rate).OfType<TaxRate>()]),
            UsualTax = UsualTax.Trim(),
            Labour = [.. Lines(Labour).Select(Hour).OfType<LabourRate>()],
            Hours = new(fields.Whole(Step, "the steps of labour"), fields.Whole(Least, "the least labour")),
            Markup = new(
                [.. Lines(Markup).Select(Mark).OfType<MarkupStep>()],
                fields.Figure(LeastMarkup, "the least mark-up"),
                fields.Figure(RoundUpTo, "what prices are rounded up to")
            ),
            BenchFee = fields.Figure(BenchFee, "the bench fee"),
            SafetySet = SafetySet,
            CounterTerms = CounterTerms.Trim(),
            InvoiceTerms = InvoiceTerms.Trim(),
            LabelAddress = LabelAddress.Trim(),
            Format = new(DayShape, NumberShape),
            ZigzagResistors = ZigzagResistors,
            MainsVolts = (double)fields.Figure(Mains.Replace("V", "", StringComparison.OrdinalIgnoreCase), "the mains"),
        };
        return new(fields.Wrong.Count == 0 ? rules : null, fields.Wrong);
    }

    private TaxRate? Rate(string line)
    {
        var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return
            words.Length == 3
            && TypedFigure.Read(words[1]) is { } percent
            && DateOnly.TryParseExact(words[2], "yyyy-MM-dd", Inv, DateTimeStyles.None, out var from)
            ? new(words[0], percent, from)
            : fields.Refuse<TaxRate>(line, "standard 20 2026-01-01");
    }

    private LabourRate? Hour(string line)
    {
        var cut = line.LastIndexOf(' ');
        return cut > 0 && TypedFigure.Read(line[cut..]) is { } perHour
            ? new(line[..cut].Trim(), perHour)
            : fields.Refuse<LabourRate>(line, "bench 60");
    }

    private MarkupStep? Mark(string line)
    {
        var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var upTo = words.Length == 2 ? TypedFigure.Read(words[0]) : null;
        return words.Length == 2 && TypedFigure.Read(words[1]) is { } percent && (upTo is not null || words[0] == "above")
            ? new(upTo, percent)
            : fields.Refuse<MarkupStep>(line, "10 100, or: above 25");
    }

    private static IEnumerable<string> Lines(string text) =>
        text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static string Say(decimal figure) => figure.ToString("0.##", Inv);
}
