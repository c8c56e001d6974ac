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
    private List<Finding> wrong = [];

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
    public string BenchFee { get; set; } = "";
    public string Warranty { get; set; } = "";
    public string FreeDays { get; set; } = "";
    public string PerDay { get; set; } = "";
    public string SafetySet { get; set; } = "";
    public string CounterTerms { get; set; } = "";
    public string InvoiceTerms { get; set; } = "";
    public string Backups { get; set; } = "";
    public string LabelAddress { get; set; } = "";
    public string DayShape { get; set; } = "";
    public string NumberShape { get; set; } = "";
    public string Mains { get; set; } = "";

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
            Warranty = Say(rules.WarrantyMonths),
            FreeDays = Say(rules.Storage.FreeDays),
            PerDay = Say(rules.Storage.PerDay),
            SafetySet = rules.SafetySet,
            CounterTerms = rules.CounterTerms,
            InvoiceTerms = rules.InvoiceTerms,
            Backups = Say(rules.BackupsKept),
            LabelAddress = rules.LabelAddress,
            DayShape = rules.Papers.DayShape,
            NumberShape = rules.Papers.NumberShape,
            Mains = rules.MainsVolts.ToString("0.#", Inv),
        };

    /// <summary>Value null when a line or a figure cannot be read.</summary>
    /// <param name="basis">What holds now: it keeps what is not typed here.</param>
    public Parsed<ShopRules> Read(ShopRules basis)
    {
        wrong = [];
        var rules = basis with
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
            Hours = new(Whole(Step, "the steps of labour"), Whole(Least, "the least labour")),
            Markup = basis.Markup with { Steps = [.. Lines(Markup).Select(Mark).OfType<MarkupStep>()] },
            BenchFee = Figure(BenchFee, "the bench fee"),
            WarrantyMonths = Whole(Warranty, "the warranty"),
            Storage = basis.Storage with
            {
                FreeDays = Whole(FreeDays, "the free days"),
                PerDay = Figure(PerDay, "storage a day"),
            },
            SafetySet = SafetySet,
            CounterTerms = CounterTerms.Trim(),
            InvoiceTerms = InvoiceTerms.Trim(),
            BackupsKept = Whole(Backups, "the backups kept"),
            LabelAddress = LabelAddress.Trim(),
            Format = new(DayShape, NumberShape),
            MainsVolts = (double)Figure(Mains.Replace("V", "", StringComparison.OrdinalIgnoreCase), "the mains"),
        };
        return new(wrong.Count == 0 ? rules : null, wrong);
    }

    private TaxRate? Rate(string line)
    {
        var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return
            words.Length == 3
            && TypedFigure.Read(words[1]) is { } percent
            && DateOnly.TryParseExact(words[2], "yyyy-MM-dd", Inv, DateTimeStyles.None, out var from)
            ? new(words[0], percent, from)
            : Refuse<TaxRate>(line, "standard 20 2026-01-01");
    }

    private LabourRate? Hour(string line)
    {
        var cut = line.LastIndexOf(' ');
        return cut > 0 && TypedFigure.Read(line[cut..]) is { } perHour
            ? new(line[..cut].Trim(), perHour)
            : Refuse<LabourRate>(line, "bench 60");
    }

    private MarkupStep? Mark(string line)
    {
        var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var upTo = words.Length == 2 ? TypedFigure.Read(words[0]) : null;
        return words.Length == 2 && TypedFigure.Read(words[1]) is { } percent && (upTo is not null || words[0] == "above")
            ? new(upTo, percent)
            : Refuse<MarkupStep>(line, "10 100, or: above 25");
    }

    private decimal Figure(string typed, string what) => TypedFigure.Read(typed) ?? Miss(typed, what);

    private int Whole(string typed, string what) =>
        int.TryParse(typed.Trim(), NumberStyles.AllowLeadingSign, Inv, out var figure) ? figure : (int)Miss(typed, what);

    private decimal Miss(string typed, string what)
    {
        wrong.Add(new(Severity.Error, Place.None, $"\"{Short(typed)}\" is no figure for {what}.", "A number."));
        return 0;
    }

    private T? Refuse<T>(string line, string remedy)
        where T : class
    {
        wrong.Add(new(Severity.Error, Place.None, $"The line \"{Short(line)}\" cannot be read.", remedy));
        return null;
    }

    private static IEnumerable<string> Lines(string text) =>
        text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static string Short(string text) => text.Length > 60 ? text[..60] : text;

    private static string Say(decimal figure) => figure.ToString("0.##", Inv);
}
