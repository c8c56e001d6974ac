using Slowglow.Bench.Questions;
using Slowglow.Sheets;

namespace Slowglow.Web.Pages.Supply;

/// <summary>What the parts stand, and what another part in the place of one would do.</summary>
public sealed partial class StressPage
{
    private UnitStress? stress;
    private Replacement? replacement;
    private IReadOnlyList<Finding> wrong = [];
    private string typed = "";

    private int Over => stress!.Rows.Count(r => r.IsOver);

    protected override async Task ArrivedAsync() =>
        stress ??= await WorkOutAsync("what every part stands", "stress", (unit, cancel) => new StressUnit(unit).Run(cancel));

    private async Task TryAsync()
    {
        var (words, text) = (typed.Trim(), Job!.Job.Sheet!.Text);
        var answer = await WorkOutAsync(
            "what the other part does",
            $"replace {words}",
            (unit, cancel) => new ReplacePart(unit, text).Run(words, cancel)
        );
        (replacement, wrong) = (answer?.Value, answer?.Value is null ? answer?.Findings ?? [] : []);
    }
}
