using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Slowglow.Bench.Papers;

namespace Slowglow.Web.Hosting;

/// <summary>Papers of a job as PDF: /job/1001/papers/invoice-3.pdf.</summary>
internal static class PaperRoutes
{
    public static void Map(WebApplication app) =>
        app.MapGet(
            "/job/{number:int}/papers/{what}.pdf",
            async (int number, string what, HttpContext context) =>
            {
                var address = $"{context.Request.Scheme}://{context.Request.Host}/job/{number}";
                var print = context.RequestServices.GetRequiredService<PrintPaper>();
                var paper = await print.RunAsync(number, what, address, context.RequestAborted);
                if (paper.Value is not { } printed)
                {
                    return Results.NotFound();
                }

                context.Response.Headers.CacheControl = "no-store";
                context.Response.Headers.ContentDisposition = $"inline; filename=\"{printed.Name}\"";
                return Results.Bytes(printed.Pdf, "application/pdf");
            }
        );
}
