using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.JSInterop;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.Questions;
using Slowglow.Diagnosis;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Web.Bench.Words;

namespace Slowglow.Web.Bench;

/// <summary>
/// Where readings are typed. The text in the box belongs to the person: nothing drawn by the program ever replaces it,
/// except at their own asking.
/// </summary>
public sealed partial class ReadingLine
{
    private ElementReference input;
    private SuggestReading? suggest;
    private OpenedJob? suggestedFor;
    private IReadOnlyList<Suggestion> ways = [];
    private IReadOnlyList<Finding> wrong = [];
    private StandingReading? stored;
    private string? meant;
    private string text = "";
    private int active = -1;
    private bool touched;

    [Parameter, EditorRequired]
    public OpenedJob Job { get; set; } = null!;

    [Parameter, EditorRequired]
    public IReadOnlyList<ReadingVerdict> Verdicts { get; set; } = [];

    /// <summary>Of the chosen setup; empty while it is being worked out.</summary>
    [Parameter]
    public IReadOnlyList<Expectation> Expected { get; set; } = [];

    [Inject]
    private WithdrawReading WithdrawReading { get; set; } = null!;

    [Inject]
    private TakeReading TakeReading { get; set; } = null!;

    [Inject]
    private IJSRuntime Script { get; set; } = null!;

    /// <summary>Puts a proposed reading into the box, with the caret where the figure goes.</summary>
    public async Task FillAsync(NextReading next)
    {
        var line = LineToType.Of(next.Probe, next.Setup, Job.Chosen.Name);
        await PutAsync(line.Before + line.After, line.Before.Length);
    }

    /// <summary>Puts a point, or a part to measure across, into the box; the figure is typed next.</summary>
    public async Task FillAsync(string where) => await PutAsync(where + " = ", where.Length + 3);

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender && RendererInfo.IsInteractive)
        {
            // A line half typed when the program went away is still there when it is back.
            // What is typed while this is on its way counts more.
            var kept = await Script.InvokeAsync<string>("slowglow.keepLine", input, $"line-{Job.Job.Number}");
            text = touched ? text : kept;
        }
    }

    protected override void OnParametersSet()
    {
        if (suggestedFor != Job && Job.Unit is { } unit)
        {
            suggest = new SuggestReading(unit.Sheet, Job.ChosenFirst);
            suggestedFor = Job;
        }
    }

    private void Typed(ChangeEventArgs change)
    {
        touched = true;
        text = change.Value?.ToString() ?? "";
        (wrong, stored) = ([], null);
        Suggest();
    }

    private void Suggest() => (ways, active) = (text.Trim().Length == 0 ? [] : suggest?.Run(text) ?? [], -1);

    private void Close() => (ways, active) = ([], -1);

    private void Nothing() { }

    private Task KeyAsync(KeyboardEventArgs key)
    {
        switch (key.Key)
        {
            case "ArrowDown" when ways.Count == 0:
                Suggest();
                break;
            case "ArrowDown":
                active = (active + 1) % ways.Count;
                break;
            case "ArrowUp" when ways.Count > 0:
                active = active <= 0 ? ways.Count - 1 : active - 1;
                break;
            case "Escape":
                Close();
                break;
        }

        return Task.CompletedTask;
    }

    private async Task ChooseAsync(Suggestion way)
    {
        await PutAsync(way.Line, way.Line.Length);
        Suggest();
    }

    private async Task PutAsync(string line, int caret)
    {
        touched = true;
        text = line;
        (wrong, stored) = ([], null);
        Close();
        await Script.InvokeVoidAsync("slowglow.putLine", input, line, caret);
    }

    private async Task StoreAsync()
    {
        if (active >= 0 && active < ways.Count)
        {
            await ChooseAsync(ways[active]);
            return;
        }

        Close();
        var line = text;
        var taken = await TakeReading.RunAsync(Job.Job.Number, line);
        if (taken.Value is null)
        {
            (wrong, stored) = (taken.Findings, null);
            return;
        }

        (wrong, stored) = ([], taken.Value);
        meant = Meant(taken.Value);
        text = text == line ? "" : text;
        await Script.InvokeVoidAsync("slowglow.clearLine", input, line);
    }

    private string? Meant(StandingReading taken) =>
        taken.Reading.Setup.Name == Job.Chosen.Name
            ? SlippedPoint.Meant(taken.Reading, Expected.FirstOrDefault(e => SameProbe(e.Probe, taken.Reading.Probe)))
            : null;

    private static bool SameProbe(Probe a, Probe b) =>
        (a.Red, a.Black, a.Kind, a.Frequency) == (b.Red, b.Black, b.Kind, b.Frequency);

    /// <summary>The line that was meant is stored before the slipped one is withdrawn: nothing is lost between the two.</summary>
    private async Task CorrectAsync(string line)
    {
        if (stored is not { } slipped)
        {
            return;
        }

        var taken = await TakeReading.RunAsync(Job.Job.Number, line);
        if (taken.Value is null)
        {
            (wrong, meant) = (taken.Findings, null);
            return;
        }

        wrong = await WithdrawReading.RunAsync(Job.Job.Number, slipped.Sequence);
        (stored, meant) = (taken.Value, null);
    }

    private async Task TakeBackAsync()
    {
        if (stored is not { } last)
        {
            return;
        }

        wrong = await WithdrawReading.RunAsync(Job.Job.Number, last.Sequence);
        if (wrong.Count == 0)
        {
            await PutAsync(last.Reading.Text, last.Reading.Text.Length);
        }
    }

    private string Verdict(StandingReading reading)
    {
        var verdict = Verdicts.FirstOrDefault(v =>
            v.Reading.Text == reading.Reading.Text && v.Reading.Setup.Name == reading.Reading.Setup.Name
        );
        return verdict is null
            ? "Being weighed."
            : $"{char.ToUpperInvariant(verdict.Word[0])}{verdict.Word[1..]}: {Figures.Value(verdict.Nominal, verdict.Reading.Probe.Unit)} belongs there.";
    }
}
