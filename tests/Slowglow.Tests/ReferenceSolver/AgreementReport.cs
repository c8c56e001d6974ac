using System.Globalization;
using System.Text;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>Counts what agreed and lists what did not.</summary>
internal sealed class AgreementReport(string sheet)
{
    private readonly List<string> disagreements = [];

    public int Worlds { get; set; }

    public int Figures { get; private set; }

    /// <summary>Worlds for which one of the two solvers has no steady state.</summary>
    public List<string> Without { get; } = [];

    public IReadOnlyList<string> Disagreements => disagreements;

    public double WorstDc { get; private set; }

    public double WorstRipple { get; private set; }

    public void Compare(string world, string net, string what, double ours, double theirs, double bound)
    {
        Figures++;
        var share = Math.Abs(ours - theirs) / bound;
        if (what == "dc")
        {
            WorstDc = Math.Max(WorstDc, share);
        }
        else
        {
            WorstRipple = Math.Max(WorstRipple, share);
        }

        if (!(share <= 1))
        {
            disagreements.Add(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{world}: {net} {what} {ours:G6} against {theirs:G6}, {share:F1} times the bound"
                )
            );
        }
    }

    public override string ToString()
    {
        var text = new StringBuilder();
        text.AppendLine(
            CultureInfo.InvariantCulture,
            $"{sheet}: {Worlds} worlds, {Figures} figures, {disagreements.Count} outside; worst {WorstDc:F2} of the dc bound, {WorstRipple:F2} of the ripple bound."
        );
        Without.ForEach(w => text.AppendLine("  without a steady state: " + w));
        disagreements.Take(60).ToList().ForEach(d => text.AppendLine("  " + d));
        return text.ToString();
    }
}
