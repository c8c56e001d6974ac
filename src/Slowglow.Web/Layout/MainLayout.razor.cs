using Microsoft.AspNetCore.Components;
using Slowglow.Workshop.Words;

namespace Slowglow.Web.Layout;

/// <summary>Frame of every page.</summary>
public sealed partial class MainLayout
{
    private TradeWords words;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    // With a base address, "#work" alone would lead to the first page.
    private string SkipTo => new Uri(Navigation.Uri).PathAndQuery + "#work";

    // Before somebody is in every page leads back here.
    private bool IsSignIn => new Uri(Navigation.Uri).AbsolutePath == "/sign-in";

    public void Dispose() => News.SettingsChanged -= Reread;

    protected override async Task OnInitializedAsync()
    {
        News.SettingsChanged += Reread;
        words = await ShopWords.ChosenAsync();
    }

    private void Reread() =>
        _ = InvokeAsync(async () =>
        {
            words = await ShopWords.ChosenAsync();
            StateHasChanged();
        });
}
