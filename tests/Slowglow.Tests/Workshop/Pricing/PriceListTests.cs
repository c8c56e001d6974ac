using CsCheck;
using Slowglow.Workshop.Money;
using Slowglow.Workshop.Pricing;
using Xunit;
using static Slowglow.Tests.Workshop.Pricing.Rates;

namespace Slowglow.Tests.Workshop.Pricing;

/// <summary>Totals worked by hand on paper, and what holds for any total. The rates are invented.</summary>
public sealed class PriceListTests
{
    private static readonly Gen<ChargeLine> Lines = Gen.Select(
        Gen.Int[0, 6],
        Gen.Int[1, 4000],
        Gen.Int[0, 200_000],
        Rates.OneOf("standard", "reduced", "none"),
        (kind, quantity, cents, tax) => new ChargeLine((LineKind)kind, "line", quantity / 100m, cents / 100m, tax)
    );

    private static readonly Gen<PricingRule> Rules = Gen.Select(
        Rates.OneOf("EUR", "JPY", "KWD"),
        Gen.Bool,
        Rates.OneOf(TaxRounding.PerLine, TaxRounding.PerDocument),
        (currency, included, rounding) => new PricingRule(currency, included, rounding)
    );

    /// <summary>1.5 h at 60.00 = 90.00; 3 at 4.35 = 13.05; 103.05 at 19 % = 19.5795, so 19.58.</summary>
    [Fact]
    public void Exclusive_prices_carry_tax_on_top()
    {
        var priced = PriceList.Work([Part(1.5m, 60), Part(3, 4.35m)], Exclusive(), Table, Autumn);

        Assert.Equal((103.05m, 19.58m, 122.63m), (priced.Net, priced.Tax, priced.Gross));
    }

    /// <summary>119.00 with 19 % in it: 119 x 19/119 = 19.00. 50.00: 50 x 19/119 = 7.98319, so 7.98.</summary>
    [Theory]
    [InlineData(119, 100, 19)]
    [InlineData(50, 42.02, 7.98)]
    public void Inclusive_prices_have_the_tax_in_them(decimal price, decimal net, decimal tax)
    {
        var priced = PriceList.Work([Part(1, price)], Inclusive(), Table, Autumn);

        Assert.Equal((net, tax, price), (priced.Net, priced.Tax, priced.Gross));
    }

    /// <summary>Three lines of 0.13 at 19 %: each 0.0247, so 0.02 and 0.06 in all; together 0.39 gives 0.0741, so 0.07.</summary>
    [Theory]
    [InlineData(TaxRounding.PerLine, 0.06)]
    [InlineData(TaxRounding.PerDocument, 0.07)]
    public void Rounding_by_line_and_by_document_differ_by_a_cent(TaxRounding rounding, decimal tax)
    {
        var priced = PriceList.Work([Part(1, 0.13m), Part(1, 0.13m), Part(1, 0.13m)], Exclusive(rounding), Table, Autumn);

        Assert.Equal((0.39m, tax), (priced.Net, priced.Tax));
    }

    /// <summary>Inclusive, by line: 3 x 9.99, each 9.99 x 19/119 = 1.59504, so 1.60 (halves and above up); by document 29.97 x 19/119 = 4.78513.</summary>
    [Theory]
    [InlineData(TaxRounding.PerLine, 4.80, 25.17)]
    [InlineData(TaxRounding.PerDocument, 4.79, 25.18)]
    public void Inclusive_rounding_keeps_what_the_customer_pays(TaxRounding rounding, decimal tax, decimal net)
    {
        var priced = PriceList.Work([Part(1, 9.99m), Part(1, 9.99m), Part(1, 9.99m)], Inclusive(rounding), Table, Autumn);

        Assert.Equal((net, tax, 29.97m), (priced.Net, priced.Tax, priced.Gross));
    }

    /// <summary>100.00 at 19 % and 40.00 at 7 % and 10.00 at 0 %: 19.00 + 2.80; 171.80 in all.</summary>
    [Fact]
    public void Mixed_rates_stand_apart()
    {
        var priced = PriceList.Work([Part(1, 100), Part(2, 20, "reduced"), Part(1, 10, "none")], Exclusive(), Table, Autumn);

        Assert.Equal([19.00m, 2.80m, 0m], priced.Taxes.Select(t => t.Tax));
        Assert.Equal(171.80m, priced.Gross);
    }

    /// <summary>100.00 on 2 March is taxed at 20 %, on 30 June too, on 1 July at 19 %.</summary>
    [Theory]
    [InlineData("2026-03-02", 20)]
    [InlineData("2026-06-30", 20)]
    [InlineData("2026-07-01", 19)]
    public void Rate_is_the_one_of_the_day(string day, decimal tax) =>
        Assert.Equal(
            tax,
            PriceList
                .Work([Part(1, 100)], Exclusive(), Table, DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture))
                .Tax
        );

    /// <summary>200.00 less 20.00 = 180.00; 19 % of it 34.20.</summary>
    [Fact]
    public void Discount_lowers_the_tax_too()
    {
        var priced = PriceList.Work([Part(1, 200), Off(20)], Exclusive(), Table, Autumn);

        Assert.Equal((180m, 34.20m), (priced.Net, priced.Tax));
    }

    /// <summary>1 234 yen x 1.5 = 1 851; 19 % = 351.69, so 352: the yen has no cents.</summary>
    [Fact]
    public void Currency_without_cents_is_rounded_to_whole_units()
    {
        var priced = PriceList.Work([Part(1.5m, 1234)], Exclusive(currency: "JPY"), Table, Autumn);

        Assert.Equal((1851m, 352m), (priced.Net, priced.Tax));
    }

    [Fact]
    public void Total_is_the_sum_of_its_parts() =>
        Gen.Select(Lines.List[1, 12], Rules)
            .Sample(
                (lines, rule) =>
                {
                    var priced = PriceList.Work(lines, rule, Table, Autumn);
                    var printed = priced.Lines.Sum(l => l.Amount);
                    Assert.Equal(rule.PricesIncludeTax ? priced.Gross : priced.Net, printed);
                    Assert.Equal(priced.Gross, priced.Taxes.Sum(t => t.Net + t.Tax));
                    Assert.Equal(priced.Gross, Currencies.Round(priced.Gross, rule.Currency));
                    if (rule.Rounding == TaxRounding.PerLine)
                    {
                        Assert.Equal(priced.Tax, priced.Lines.Sum(l => l.Tax));
                    }
                }
            );

    [Theory]
    [InlineData(-1, 10, "standard", "quantity")]
    [InlineData(1, -10, "standard", "price")]
    [InlineData(1, 10, "luxury", "luxury")]
    public void Line_that_cannot_stand_is_told_in_a_sentence(decimal quantity, decimal price, string tax, string said)
    {
        var wrong = LineCheck.Look([Part(quantity, price, tax)], Table, Autumn);

        Assert.Contains(said, Assert.Single(wrong).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Rate_that_has_not_begun_is_no_rate() => Assert.NotEmpty(LineCheck.Look([Part(1, 1)], Table, new(2019, 12, 31)));

    [Fact]
    public void Discount_beyond_the_lines_is_refused() =>
        Assert.Contains(
            "credit note",
            Assert.Single(LineCheck.Look([Part(1, 10), Off(11)], Table, Autumn)).Remedy,
            StringComparison.Ordinal
        );
}
