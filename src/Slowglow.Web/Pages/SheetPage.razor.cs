using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Slowglow.Bench.Writing;
using Slowglow.Sheets;

namespace Slowglow.Web.Pages;

/// <summary>Where a drawing becomes a sheet. The typing itself lives in the browser (Editor/), so that it goes on while this program is away.</summary>
public sealed partial class SheetPage
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

    private JobSheet? Sheet { get; set; }

    protected override async Task OnParametersSetAsync()
    {
        var answer = await Versions.RunAsync(Number);
        (Sheet, findings, read) = (answer.Value, answer.Findings, true);
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
