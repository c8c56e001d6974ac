using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.Writing;
using Slowglow.Sheets;

namespace Slowglow.Web.Pages;

/// <summary>Where a drawing becomes a sheet. The typing itself lives in the browser (Editor/), so that it goes on while this program is away.</summary>
public sealed partial class SheetPage : IDisposable
{
    private ElementReference desk;
    private IReadOnlyList<Finding> findings = [];
    private bool read;
    private int? laidOut;

    /// <summary>Of the job.</summary>
    [Parameter]
    public int Number { get; set; }

    [Inject]
    private ReadVersions Versions { get; set; } = null!;

    [Inject]
    private IJSRuntime Browser { get; set; } = null!;

    [Inject]
    private JobNews News { get; set; } = null!;

    private JobSheet? Sheet { get; set; }

    public void Dispose() => News.Changed -= Changed;

    protected override void OnInitialized() => News.Changed += Changed;

    protected override async Task OnParametersSetAsync()
    {
        var answer = await Versions.RunAsync(Number);
        (Sheet, findings, read) = (answer.Value, answer.Findings, true);
    }

    /// <summary>A version was saved, here or elsewhere: the list of versions follows, the text in the browser sees to itself.</summary>
    private void Changed(int number)
    {
        if (number == Number)
        {
            _ = InvokeAsync(async () =>
            {
                await OnParametersSetAsync();
                StateHasChanged();
            });
        }
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (Sheet is not null && laidOut != Number)
        {
            laidOut = Number;
            await using var script = await Browser.InvokeAsync<IJSObjectReference>("import", "/assets/sheet-editor.js");
            await script.InvokeVoidAsync("open", desk);
        }
    }
}
