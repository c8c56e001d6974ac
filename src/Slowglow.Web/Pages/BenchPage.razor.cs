using Microsoft.AspNetCore.Components;
using Slowglow.Diagnosis;
using Slowglow.Web.Bench;
using Slowglow.Web.Desks;

namespace Slowglow.Web.Pages;

/// <summary>The bench card of a job.</summary>
public sealed partial class BenchPage : IDisposable
{
    private JobDesk? desk;
    private DeskPicture? picture;
    private ReadingLine? line;
    private int? asked;
    private bool read;

    [Parameter]
    public int? Number { get; set; }

    [Inject]
    private JobDesks Desks { get; set; } = null!;

    [Inject]
    private FirstJob FirstJob { get; set; } = null!;

    private string Title =>
        picture?.Job is { } job ? $"Job {job.Job.Number}, {job.Job.Unit.Title} - Slowglow" : "Bench - Slowglow";

    public void Dispose()
    {
        if (desk is not null)
        {
            desk.Changed -= Redraw;
        }
    }

    protected override async Task OnParametersSetAsync()
    {
        var wanted = Number ?? await FirstJob.NumberAsync();
        read = true;
        if (wanted == asked && desk is not null)
        {
            return;
        }

        Dispose();
        (asked, desk, picture) = (wanted, null, null);
        if (wanted is { } number)
        {
            desk = Desks.Of(number);
            desk.Changed += Redraw;
            await desk.OpenAsync();
            picture = desk.Picture;
        }
    }

    private Task TakeAsync(NextReading next) => line?.FillAsync(next) ?? Task.CompletedTask;

    private Task PointAsync(string where) => line?.FillAsync(where) ?? Task.CompletedTask;

    private void Redraw() =>
        _ = InvokeAsync(() =>
        {
            picture = desk?.Picture;
            StateHasChanged();
        });
}
