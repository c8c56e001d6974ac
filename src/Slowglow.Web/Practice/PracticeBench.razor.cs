using Microsoft.AspNetCore.Components;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.Rehearsals.Practice;
using Slowglow.Sheets;

namespace Slowglow.Web.Practice;

/// <summary>The bench of a round: where the meter goes, what was changed, what it came to.</summary>
public sealed partial class PracticeBench
{
    private IReadOnlyList<PointName> points = [];
    private IReadOnlyList<PracticeStep> steps = [];
    private IReadOnlyList<Finding> wrong = [];
    private PracticeRound? shown;
    private string asked = "";
    private string part = "";
    private bool busy;

    [Parameter, EditorRequired]
    public PracticeRound Round { get; set; } = null!;

    /// <summary>The round has come to its end.</summary>
    [Parameter, EditorRequired]
    public EventCallback Ended { get; set; }

    /// <summary>The same unit is wanted once more.</summary>
    [Parameter, EditorRequired]
    public EventCallback Again { get; set; }

    protected override void OnParametersSet()
    {
        if (shown != Round)
        {
            (shown, points, steps, wrong) = (Round, PointNames.Of(Round.Sheet), Round.Steps, []);
        }
    }

    private Task MeasureAsync() =>
        DoAsync(asked, () => Round.Measure(asked) is var read && read.Value is null ? read.Findings : [], () => asked = "");

    private Task ChangeAsync() =>
        DoAsync(part, () => Round.Change(part) is var read && read.Value is null ? read.Findings : [], () => part = "");

    /// <summary>What was typed goes only once it was understood.</summary>
    private async Task DoAsync(string typed, Func<IReadOnlyList<Finding>> work, Action clear)
    {
        if (typed.Trim().Length == 0 || busy)
        {
            return;
        }

        busy = true;
        wrong = await Task.Run(work);
        (busy, steps) = (false, Round.Steps);
        if (wrong.Count == 0)
        {
            clear();
        }

        if (Round.IsOver)
        {
            await Ended.InvokeAsync();
        }
    }

    private async Task GiveUpAsync()
    {
        Round.GiveUp();
        await Ended.InvokeAsync();
    }
}
