using Slowglow.Web.Bench;
namespace Slowglow.Browser.Tests.Pieces;
public sealed class GalleryTemp
{
    [Fact]
    public async Task Draw()
    {
        var p = Invented.Picture();
        var w = new Dictionary<string, object?> { ["Picture"] = p };
        var ws = new Dictionary<string, object?> { ["Picture"] = p, ["Sheet"] = Invented.Sheet };
        var css = string.Join("\n", new[] { "tokens", "shop", "controls", "bench" }.Select(n => File.ReadAllText($"/work/wt/web/src/Slowglow.Web/Assets/{n}.css")));
        var html = $"<!DOCTYPE html><html><head><meta name=viewport content='width=device-width'><style>{css}</style></head><body><div class=shop><header class=topbar><a class=mark>Slowglow</a><nav><a class=active>Bench</a><a>Job book</a></nav></header>"
            + await Drawn.AsHtmlAsync<CautionsLine>([])
            + "<div class=columns><div class=column>" + await Drawn.AsHtmlAsync<SuspectList>(ws) + await Drawn.AsHtmlAsync<RootCauseList>(w)
            + "</div><div class=column>" + await Drawn.AsHtmlAsync<NextList>(new() { ["Picture"] = p, ["Take"] = default(Microsoft.AspNetCore.Components.EventCallback<Slowglow.Diagnosis.NextReading>) }) + await Drawn.AsHtmlAsync<LevelsCard>(w)
            + "</div><div class='column wide'>" + await Drawn.AsHtmlAsync<ExpectedTable>(w) + "</div></div></div></body></html>";
        File.WriteAllText("/tmp/gallery.html", html);
    }
}
