using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Slowglow.Web.Layout;

/// <summary>
/// Moves the focus to the heading of a page that has just been gone to, so that it is read aloud and the Tab key goes on from
/// there. It comes after the page is drawn, and on a busy machine later than the first letter typed: hands that are in a field
/// by then are left alone.
/// </summary>
public sealed class HeadingFocus : ComponentBase
{
    private Type? shown;
    private bool isNew;

    /// <summary>What is being shown.</summary>
    [Parameter, EditorRequired]
    public RouteData RouteData { get; set; } = null!;

    [Inject]
    private IJSRuntime Script { get; set; } = null!;

    /// <inheritdoc />
    protected override void OnParametersSet()
    {
        isNew = shown != RouteData.PageType;
        shown = RouteData.PageType;
    }

    /// <inheritdoc />
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (isNew)
        {
            isNew = false;
            await Script.InvokeVoidAsync("slowglow.focusHeading");
        }
    }
}
