using System.Globalization;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Diagnosis.Suspects;
using Slowglow.Quantities;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Next;

/// <summary>Says why a reading is worth taking and what each outcome would mean.</summary>
internal sealed class OutcomeWords(IReadOnlyList<Cure> cures)
{
    private const int MostRanges = 4;
    private const double TooRare = 0.02;

    public NextReading Say(Proposal proposal, Predictive predictive, IReadOnlyList<(Cure Cure, Prediction Prediction)> leads) =>
        new(
            proposal.Probe,
            proposal.Bench.Setup,
            Math.Round(proposal.Bits, 2),
            Math.Round(proposal.Minutes, 1),
            proposal.Risk,
            Why(proposal.Probe, leads),
            Outcomes(proposal.Probe, predictive)
        );

    private static string Why(Probe probe, IReadOnlyList<(Cure Cure, Prediction Prediction)> leads)
    {
        if (leads.Count == 0)
        {
            return $"{probe.Where} reads differently for different suspects.";
        }
        var first = leads[0];
        var other = leads.Skip(1).OrderByDescending(l => Apart(first.Prediction, l.Prediction)).FirstOrDefault();
        var shows = $"With {first.Cure.Name} at fault {probe.Where} would show {Figure(probe, first.Prediction)}";
        return other.Cure is null
            ? shows + "."
            : $"{shows}; with {other.Cure.Name} it would show {Figure(probe, other.Prediction)}.";
    }

    private static double Apart(Prediction a, Prediction b) =>
        a.HasFigure && b.HasFigure ? Math.Abs(a.Mean - b.Mean) / Math.Max(a.Sd + b.Sd, 1e-9)
        : a.HasFigure == b.HasFigure ? 0
        : 100;

    private static string Figure(Probe probe, Prediction prediction) =>
        prediction.HasFigure ? About(ReadingWords.Value(probe, Scale.Of(probe).From(prediction.Mean))) : NoFigure(probe);

    private static string About(string figure) => char.IsAsciiDigit(figure.TrimStart('-')[0]) ? "about " + figure : figure;

    private static string NoFigure(Probe probe) =>
        probe.Kind is ProbeKind.Ohm or ProbeKind.Diode ? "overload" : "no steady figure";

    private List<Outcome> Outcomes(Probe probe, Predictive predictive)
    {
        var ranges = OutcomeRanges.Of(predictive, MostRanges, TooRare);
        var scale = Scale.Of(probe);
        var outcomes = new List<Outcome>();
        foreach (var range in ranges)
        {
            var low = range.IsNoFigure ? double.NegativeInfinity : Edge(scale, range.Low);
            var high = range.IsNoFigure ? double.PositiveInfinity : Edge(scale, range.High);
            var said = range.IsNoFigure ? NoFigure(probe) : RangeWords(low, high, probe.Unit);
            outcomes.Add(new(said, low, high, range.Probability / predictive.Covered, Means(range)));
        }
        return outcomes;
    }

    private static double Edge(Scale scale, double scaled) => double.IsInfinity(scaled) ? scaled : scale.From(scaled);

    private static string RangeWords(double low, double high, string unit) =>
        (double.IsNegativeInfinity(low), double.IsPositiveInfinity(high)) switch
        {
            (true, true) => "any figure",
            (true, false) => $"below {Engineering.Format(high, unit, 2)}",
            (false, true) => $"above {Engineering.Format(low, unit, 2)}",
            _ => $"{Engineering.Format(low, unit, 2)} to {Engineering.Format(high, unit, 2)}",
        };

    /// <summary>The one or two cures that lead in the range, and whether the present leader is cleared.</summary>
    private string Means(OutcomeRange range)
    {
        var order = Enumerable.Range(0, range.Shares.Length).OrderByDescending(c => range.Shares[c]).ToArray();
        var (best, next) = (order[0], order[1]);
        var says =
            range.Shares[best] > 0.75
                ? $"{Name(best)}, {Percent(range.Shares[best])}"
                : $"{Name(best)} ({Percent(range.Shares[best])}) or {Name(next)} ({Percent(range.Shares[next])})";
        var cleared = best != 0 && next != 0 && range.Shares[0] < 0.2 * cures[0].Probability;
        return cleared ? $"{says}; clears {Name(0)}." : says + ".";
    }

    private string Name(int cure) =>
        cure < cures.Count ? cures[cure].Name
        : cure == cures.Count ? "nothing wrong"
        : "none of these";

    private static string Percent(double share) => Math.Round(100 * share).ToString(CultureInfo.InvariantCulture) + " %";
}
