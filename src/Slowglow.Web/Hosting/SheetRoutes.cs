using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Net.Http.Headers;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.Writing;

namespace Slowglow.Web.Hosting;

/// <summary>
/// What the sheet's page asks while somebody types. Plain requests, and not the page's own connection, so that typing goes on while that is
/// away. All that change anything take JSON, which no other site's page may send here.
/// </summary>
internal static class SheetRoutes
{
    public static void Map(WebApplication app)
    {
        var sheet = app.MapGroup("/job/{number:int}/sheet").DisableAntiforgery();
        app.MapGet("/sheets/words", () => Results.Json(OfferedWords.All));
        app.MapGet(
            "/sheets",
            async (ListSheets list, HttpContext context) => Results.Json(await list.RunAsync(context.RequestAborted))
        );
        sheet.MapGet("/state", StateAsync);
        sheet.MapGet("/text.yaml", TextAsync);
        sheet.MapPost("/read", (TypedText typed, ReadTyped read) => Results.Json(read.Run(typed.Text)));
        sheet.MapPost("/draft", DraftAsync);
        sheet.MapPost("/drop-draft", DropDraft);
        sheet.MapPost("/save", SaveAsync);
        sheet.MapPost("/drawing", DrawAsync);
    }

    private static async Task<IResult> StateAsync(int number, ReadVersions versions, DraftShelf shelf, HttpContext context)
    {
        context.Response.Headers.CacheControl = "no-store";
        var job = await versions.RunAsync(number, context.RequestAborted);
        return job.Value is not { } sheet
            ? Results.NotFound()
            : Results.Json(
                new
                {
                    sheet.Unit,
                    Version = sheet.Newest,
                    Count = sheet.Versions.Count,
                    Drafts = shelf.Of(number),
                    Unreadable = shelf.UnreadableOf(number),
                }
            );
    }

    private static async Task<IResult> TextAsync(int number, int? id, ReadVersions versions, HttpContext context)
    {
        var job = await versions.RunAsync(number, context.RequestAborted);
        var version = id is null ? job.Value?.Newest : job.Value?.Versions.FirstOrDefault(v => v.Id == id);
        if (version is null)
        {
            return Results.NotFound();
        }

        context.Response.Headers[HeaderNames.CacheControl] = "no-store";
        return Results.File(
            System.Text.Encoding.UTF8.GetBytes(version.Text),
            "application/yaml",
            $"{SheetFileName.Of(job.Value!.Unit)}-{version.Ordinal}.yaml"
        );
    }

    private static async Task<IResult> DraftAsync(int number, TypedText typed, DraftShelf shelf, ReadVersions versions)
    {
        var job = await versions.RunAsync(number);
        if (job.Value is null)
        {
            return Results.NotFound();
        }

        var kept = shelf.Keep(number, typed.Window ?? "", typed.Text, typed.BasedOn);
        return Results.Json(new { Kept = kept, Newest = job.Value.Newest?.Id });
    }

    private static IResult DropDraft(int number, TypedText typed, DraftShelf shelf)
    {
        shelf.Clear(number, typed.Window ?? "");
        return Results.NoContent();
    }

    private static async Task<IResult> SaveAsync(int number, TypedText typed, SaveSheet save, DraftShelf shelf)
    {
        // Not cancelled with the request: what arrived is stored, whether or not the window waits for the answer.
        var saved = await save.RunAsync(number, typed.Text, typed.BasedOn, typed.OverNewer);
        if (saved.Value is { } stored)
        {
            shelf.Clear(number, typed.Window ?? "");
            return Results.Json(new { stored.Sheet, stored.IsNew });
        }

        var why = saved.Findings[0];
        return Results.Json(new { Refused = why.Text, why.Remedy }, statusCode: StatusCodes.Status409Conflict);
    }

    private static async Task<IResult> DrawAsync(TypedText typed, DrawTyped draw, ReadSettings settings, HttpContext context)
    {
        try
        {
            var style = (await settings.RunAsync(context.RequestAborted)).DrawingStyle();
            var svg = await Task.Run(() => draw.Run(typed.Text, style, context.RequestAborted), context.RequestAborted);
            return svg is null ? Results.NoContent() : Results.Text(svg, "image/svg+xml");
        }
        catch (OperationCanceledException)
        {
            // The next change is being drawn already.
            return Results.NoContent();
        }
    }
}
