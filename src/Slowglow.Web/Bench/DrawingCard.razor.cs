using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Slowglow.Bench.Questions;
using Slowglow.Diagnosis;
using Slowglow.Drawing;
using Slowglow.Sheets.Parts;
using Slowglow.Web.Desks;

namespace Slowglow.Web.Bench;

/// <summary>The service drawing with what belongs at every point, what was measured, the suspects and the next reading on it.</summary>
public sealed partial class DrawingCard
{
    private ElementReference paper;
    private DotNetObjectReference<DrawingCard>? self;
    private DrawingSize size = DrawingSize.Sitting;
    private DeskPicture? drawn;
    private Part? part;
    private string svg = "";
    private string shown = "";
    private string ringed = "";

    [Parameter, EditorRequired]
    public DeskPicture Picture { get; set; } = null!;

    /// <summary>A point, or a part to measure across, was chosen for the reading line.</summary>
    [Parameter, EditorRequired]
    public EventCallback<string> Point { get; set; }

    [Inject]
    private IJSRuntime Script { get; set; } = null!;

    [JSInvokable]
    public Task ChoosePointAsync(string where) => Point.InvokeAsync(where);

    [JSInvokable]
    public void ChoosePart(string designator)
    {
        part = Picture.Layout?.Sheet.Parts.FirstOrDefault(p => p.Designator == designator);
        StateHasChanged();
    }

    public ValueTask DisposeAsync()
    {
        self?.Dispose();
        return ValueTask.CompletedTask;
    }

    protected override void OnParametersSet()
    {
        if (Picture.Layout is not { } layout || Picture.Job is not { } job)
        {
            svg = "";
            return;
        }

        if (
            drawn is not null
            && ReferenceEquals(drawn.Job, job)
            && ReferenceEquals(drawn.Layout, layout)
            && ReferenceEquals(drawn.Expected, Picture.Expected)
            && ReferenceEquals(drawn.Diagnosis, Picture.Diagnosis)
        )
        {
            return;
        }

        drawn = Picture;
        var expected = Picture.ExpectedStale ? [] : Picture.Expected?.Value ?? [];
        svg = ServiceDrawing.Write(layout, MarkDrawing.Of(job, expected, Picture.Diagnosis?.Value), standsAlone: false);
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!RendererInfo.IsInteractive || shown == svg)
        {
            return;
        }

        shown = svg;
        self ??= DotNetObjectReference.Create(this);
        var next = Picture.Diagnosis?.Value.Next.FirstOrDefault()?.Probe.Where ?? "";
        await Script.InvokeVoidAsync("slowglow.drawing", paper, self, next != ringed);
        ringed = next;
    }

    private static string Name(DrawingSize choice) =>
        choice switch
        {
            DrawingSize.Whole => "Whole",
            DrawingSize.Sitting => "Sitting",
            _ => "Standing",
        };

    private static string ClassOf(DrawingSize choice) =>
        choice switch
        {
            DrawingSize.Whole => "whole",
            DrawingSize.Sitting => "sitting",
            _ => "standing",
        };

    private Task AcrossAsync(string designator) => Point.InvokeAsync(designator);
}
