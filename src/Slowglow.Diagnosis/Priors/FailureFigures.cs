using System.Globalization;
using Slowglow.Circuits;

namespace Slowglow.Diagnosis.Priors;

/// <summary>Failure rates by part kind and shares by failure mode, from rates.csv and modes.csv.</summary>
internal sealed class FailureFigures
{
    /// <summary>
    /// Ratios between families carry this exponent. Two editions of one handbook disagree by factors of 10 to 70 between families
    /// (a spread about as wide as that of the rates themselves), so half of a ratio's logarithm is believed.
    /// </summary>
    private const double FamilyExponent = 0.5;

    /// <summary>Share of a mode that the tables do not name for a kind.</summary>
    private const double UnnamedShare = 0.02;

    private readonly Dictionary<PartKind, double> rates = [];
    private readonly Dictionary<(PartKind, FailureMode), double> shares = [];

    private FailureFigures() { }

    public static FailureFigures Shipped { get; } = Load();

    /// <summary>Failures per million hours as the table has them.</summary>
    public double Rate(PartKind kind) => rates[kind];

    /// <summary>How often the kind fails beside a film resistor, with the distrust between families taken in.</summary>
    public double RelativeRate(PartKind kind) => Math.Pow(rates[kind] / rates[PartKind.FilmResistor], FamilyExponent);

    /// <summary>Share of the mode given that a part of this kind failed, 0 to 1.</summary>
    public double Share(PartKind kind, FailureMode mode) => shares.GetValueOrDefault((kind, mode), UnnamedShare);

    private static FailureFigures Load()
    {
        var figures = new FailureFigures();
        foreach (var row in EmbeddedTable.Rows("rates.csv"))
        {
            figures.rates[Enum.Parse<PartKind>(row[0])] = double.Parse(row[1], CultureInfo.InvariantCulture);
        }
        foreach (var row in EmbeddedTable.Rows("modes.csv"))
        {
            var key = (Enum.Parse<PartKind>(row[0]), Enum.Parse<FailureMode>(row[1]));
            figures.shares[key] = double.Parse(row[2], CultureInfo.InvariantCulture);
        }
        return figures;
    }
}
