using CsCheck;
using Slowglow.Tests.Workshop.Pricing;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Pricing;
using Xunit;
using static Slowglow.Tests.Workshop.Pricing.Rates;

namespace Slowglow.Tests.Workshop.Papers;

/// <summary>A correction creates nothing and loses nothing.</summary>
public sealed class CreditingTests
{
    private static readonly Party Nobody = new("", "", "", "");

    /// <summary>
    /// 100.00 + 50.00 = 150.00 and 28.50 tax. The 50.00 line back: 28.50 x 50/150 = 9.50; then 33.33 of the first:
    /// 28.50 x 83.33/150 = 15.8327, so 15.83, less 9.50 = 6.33; the rest, 66.67, takes 28.50 - 15.83 = 12.67.
    /// </summary>
    [Fact]
    public void Invoice_credited_in_three_steps_comes_to_nothing()
    {
        var invoice = PriceList.Work([Part(1, 100), Part(1, 50)], Exclusive(), Table, Autumn);
        List<Paper> notes = [];
        foreach (var (line, amount, tax) in new[] { (1, 50m, 9.50m), (0, 33.33m, 6.33m), (0, 66.67m, 12.67m) })
        {
            CreditedAmount[] wanted = [new(line, amount)];
            Assert.Empty(Crediting.Look(invoice, notes, wanted));
            notes.Add(Note(Crediting.Work(invoice, notes, wanted, Autumn), wanted));
            Assert.Equal(tax, notes[^1].Priced.Tax);
        }

        Assert.Equal(invoice.Gross, notes.Sum(n => n.Priced.Gross));
        Assert.NotEmpty(Crediting.Look(invoice, notes, [new(0, 0.01m)]));
    }

    [Fact]
    public void More_than_is_left_cannot_be_credited()
    {
        var invoice = PriceList.Work([Part(1, 100)], Exclusive(), Table, Autumn);

        var wrong = Crediting.Look(invoice, [], [new(0, 100.01m)]);

        Assert.Contains("100.00 of it is left", Assert.Single(wrong).Remedy, StringComparison.Ordinal);
        Assert.NotEmpty(Crediting.Look(invoice, [], [new(0, -1)]));
        Assert.NotEmpty(Crediting.Look(invoice, [], [new(7, 1)]));
        Assert.NotEmpty(Crediting.Look(invoice, [], []));
    }

    [Fact]
    public void Whatever_the_steps_nothing_is_created_or_lost() =>
        Gen.Select(
                Gen.Int[1, 20_000].List[1, 6],
                Gen.Bool,
                Rates.OneOf(TaxRounding.PerLine, TaxRounding.PerDocument),
                Gen.Int[1, 99].List[3, 3]
            )
            .Sample(
                (cents, included, rounding, cuts) =>
                {
                    string[] names = ["standard", "reduced", "none"];
                    var lines = cents.Select((c, i) => Part(1, c / 100m, names[i % 3])).ToList();
                    var invoice = PriceList.Work(lines, new("EUR", included, rounding), Table, Autumn);
                    List<Paper> notes = [];
                    foreach (var cut in cuts.Append(100))
                    {
                        var left = Crediting.Left(invoice, notes);
                        var wanted = left.Select((l, i) => new CreditedAmount(i, decimal.Round(l * cut / 100, 2))).ToList();
                        notes.Add(Note(Crediting.Work(invoice, notes, wanted, Spring), wanted));
                    }

                    foreach (var share in invoice.Taxes)
                    {
                        var back = notes.SelectMany(n => n.Priced.Taxes).Where(t => t.Name == share.Name).ToList();
                        Assert.Equal((share.Net, share.Tax), (back.Sum(b => b.Net), back.Sum(b => b.Tax)));
                    }
                }
            );

    private static Paper Note(Priced priced, IReadOnlyList<CreditedAmount> wanted) =>
        new(PaperKind.CreditNote, 1, 1, Autumn, Nobody, Nobody, "", priced, [], "", 1, [.. wanted.Select(w => w.Line)]);
}
