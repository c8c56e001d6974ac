using Slowglow.Workshop.Collecting;
using Slowglow.Workshop.Labour;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.People;
using Slowglow.Workshop.Pricing;

namespace Slowglow.Workshop.Shop;

/// <summary>What the owner has settled: who the shop is, how it charges, what it promises.</summary>
/// <param name="Party">Name, address and tax number for the head of every paper.</param>
/// <param name="WorthPercent">A repair above this share of what the unit is worth is called not worth it.</param>
/// <param name="QuoteDays">How long a quote can be accepted.</param>
/// <param name="PayDays">Days to pay an invoice in.</param>
/// <param name="SafetySet">Name of the test set by region.</param>
/// <param name="CounterTerms">Printed on the receipt.</param>
/// <param name="InvoiceTerms">Printed on invoices.</param>
/// <param name="BackupsKept">Nightly backups kept; 0 = none are made.</param>
/// <param name="People">Those who work here; empty where the shop is one person.</param>
/// <param name="AreExamples">True until the owner has set figures of their own: papers then say so.</param>
/// <param name="LabelAddress">Where the page is reached from, for the code on labels: "http://bench.lan:5080"; empty = the address that the label was asked for at.</param>
/// <param name="Format">How days and figures are written on papers; null = the usual way.</param>
/// <param name="ChaseDays">A supplier whose day is past, or who named none, is asked again after so many days without a word; 0 = never.</param>
/// <param name="MainsVolts">What units here are strapped for, as a rule: volts, 90 to 260.</param>
/// <param name="ZigzagResistors">Resistors on drawings as the zigzag of IEEE 315 instead of the box of IEC 60617.</param>
public sealed record ShopRules(
    Party Party,
    PricingRule Pricing,
    TaxTable Taxes,
    string UsualTax,
    IReadOnlyList<LabourRate> Labour,
    HoursRule Hours,
    MarkupRule Markup,
    decimal BenchFee,
    int WarrantyMonths,
    decimal WorthPercent,
    int QuoteDays,
    int PayDays,
    StorageRule Storage,
    string SafetySet,
    string CounterTerms,
    string InvoiceTerms,
    int BackupsKept,
    IReadOnlyList<Person> People,
    bool AreExamples,
    string LabelAddress = "",
    PaperFormat? Format = null,
    double MainsVolts = 230,
    int ChaseDays = 7,
    bool ZigzagResistors = false
)
{
    public string Currency => Pricing.Currency;

    public PaperFormat Papers => Format ?? PaperFormat.Usual;

    /// <summary>True once somebody has a PIN: from then on everybody signs in, and roles count.</summary>
    public bool AsksForPin => People.Any(p => p.HasPin);
}
