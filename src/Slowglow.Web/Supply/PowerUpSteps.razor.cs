using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Slowglow.Bench.Jobs;
using Slowglow.Power.PowerUp;
using Slowglow.Sheets.Readings;

namespace Slowglow.Web.Supply;

/// <summary>One step of a power-up at a time, in figures to be read from where one stands.</summary>
public sealed partial class PowerUpSteps
{
    private const int MostSuspects = 6;
    private readonly Dictionary<int, StepPointLine> lines = [];
    private int shown = -1;

    [Parameter, EditorRequired]
    public PowerUpPlan Plan { get; set; } = null!;

    [Parameter, EditorRequired]
    public OpenedJob Job { get; set; } = null!;

    /// <summary>Which step, from 0.</summary>
    [Parameter, EditorRequired]
    public int At { get; set; }

    /// <summary>Asked to show another step.</summary>
    [Parameter, EditorRequired]
    public EventCallback<int> Go { get; set; }

    private PowerUpStep Now => Plan.Steps[At];

    private IEnumerable<(PowerPoint Point, double Value)> Shown =>
        Now.Points.Select(p => (p, EnteredAt(p)?.Reading.Value ?? double.NaN)).Where(p => double.IsFinite(p.Item2));

    private IReadOnlyList<PowerSign> Fitting => Now.SignsOf(Shown);

    private bool MustStop => Shown.Any(s => Now.Stops(s.Point, s.Value));

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (shown != At && RendererInfo.IsInteractive)
        {
            shown = At;
            await FocusAsync(Array.FindIndex([.. Now.Points], p => EnteredAt(p) is null));
        }
    }

    /// <summary>The last reading of the job at that point, in a setup that stands as the step does.</summary>
    private StandingReading? EnteredAt(PowerPoint point) => EnteredAt(point, Now);

    private StandingReading? EnteredAt(PowerPoint point, PowerUpStep step) =>
        Job.Readings.LastOrDefault(r => IsSame(r.Reading.Probe, point.Probe) && TakeStepReading.IsIn(r, step.Setup));

    private static bool IsSame(Probe read, Probe asked) =>
        read.Kind == asked.Kind && (asked.IsInlet ? read.IsInlet : read.Red == asked.Red && read.Black == asked.Black);

    private bool IsDone(PowerUpStep step) => step.Points.All(p => EnteredAt(p, step) is not null);

    private Task NextAsync(int index) => FocusAsync(index + 1);

    private async Task FocusAsync(int index)
    {
        if (lines.TryGetValue(index, out var line) && index < Now.Points.Count)
        {
            await line.FocusAsync();
        }
    }

    private Task Turn(KeyboardEventArgs key) =>
        key.Key switch
        {
            "PageDown" when At < Plan.Steps.Count - 1 => Go.InvokeAsync(At + 1),
            "PageUp" when At > 0 => Go.InvokeAsync(At - 1),
            _ => Task.CompletedTask,
        };
}
