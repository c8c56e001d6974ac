using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Slowglow.Bench.Questions;
using Slowglow.Drawing;
using Slowglow.Web.Desks;

namespace Slowglow.Web.Hosting;

/// <summary>The drawing of a job by itself, with its figures: /job/1001/drawing.svg.</summary>
internal static class DrawingRoute
{
    public static void Map(WebApplication app) =>
        app.MapGet(
            "/job/{number:int}/drawing.svg",
            async (int number, JobDesks desks, HttpContext context) =>
            {
                var desk = desks.Of(number);
                await desk.OpenAsync();
                await desk.Settled.WaitAsync(context.RequestAborted);
                if (desk.Picture is not { Job: { } job, Layout: { } layout } picture)
                {
                    return Results.NotFound();
                }

                var figures = MarkDrawing.Of(job, picture.Expected?.Value ?? [], picture.Diagnosis?.Value);
                context.Response.Headers.CacheControl = "no-store";
                // A document by itself: it carries its own style sheet and may load nothing.
                context.Response.Headers.ContentSecurityPolicy =
                    "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'";
                return Results.Bytes(Encoding.UTF8.GetBytes(ServiceDrawing.Write(layout, figures)), "image/svg+xml");
            }
        );
}
