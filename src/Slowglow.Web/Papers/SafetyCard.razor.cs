using System.Globalization;
using Slowglow.Workshop.Safety;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Web.Papers;

/// <summary>The safety test form: figures against the limits of the rule book.</summary>
public sealed partial class SafetyCard
{
    private static readonly CultureInfo Inv = CultureInfo.InvariantCulture;
    private readonly Dictionary<int, string> measured = [];
    private readonly Dictionary<int, string> own = [];
    private string set = "";
    private string equipment = "I";
    private string cord = "2";
    private string cordOhms = "0";
    private string instrument = "";
    private string who = "";
    private DateOnly? calibrated;
    private bool lead;
    private bool fuse;

    private IReadOnlyList<SafetyLimit> Limits => SafetySets.Of(set, equipment);

    protected override void OnParametersSet()
    {
        set = set.Length > 0 ? set : File.Rules.SafetySet;
        who = who.Length > 0 ? who : By ?? "";
    }

    private static string Typed(Dictionary<int, string> all, int i) => all.GetValueOrDefault(i, "");

    private static double? Number(string typed) =>
        double.TryParse(typed.Trim().Replace(',', '.'), NumberStyles.Float, Inv, out var value) ? value : null;

    private double? LimitOf(SafetyLimit limit) => SafetySets.With(limit, Number(cord) ?? 0, Number(cordOhms) ?? 0);

    private async Task TestAsync()
    {
        List<SafetyFigure> figures = [];
        foreach (var (limit, i) in Limits.Select((l, i) => (l, i)).Where(l => Typed(measured, l.i).Trim().Length > 0))
        {
            var value = Number(measured[i]);
            var most = LimitOf(limit) ?? Number(Typed(own, i));
            if (value is null || most is null)
            {
                Refuse(
                    $"The {limit.Test} has a figure or a limit that cannot be read.",
                    $"0.12, in {limit.Unit}; the limit too where none is known here."
                );
                return;
            }

            figures.Add(
                new(
                    limit.Test,
                    value.Value,
                    limit.Unit,
                    limit.IsLeast,
                    most.Value,
                    limit.Value is null ? "technician's own" : limit.Standard
                )
            );
        }

        if (figures.Count < Limits.Count(l => l.Value is not null && l.Test != SafetyTests.Chassis))
        {
            Refuse("A figure is missing.", "What the instrument showed, for every test of the set.");
            return;
        }

        var test = new SafetyTest(set, equipment, figures, lead, fuse, instrument.Trim(), calibrated, who.Trim(), File.Today);
        if (await EnterAsync(() => new SafetyTested { What = test }))
        {
            // Looked at anew for the next test.
            (lead, fuse) = (false, false);
            measured.Clear();
            own.Clear();
        }
    }
}
