using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Slowglow.Bench.Photographs;
using Slowglow.Workshop.Photos;

namespace Slowglow.Web.Hosting;

/// <summary>Photographs: /photos/(hash).jpg. What has a hash for a name never changes.</summary>
internal static class PhotoRoutes
{
    public static void Map(WebApplication app) =>
        app.MapGet(
            "/photos/{file}",
            async (string file, HttpContext context) =>
            {
                var photo = await context.RequestServices.GetRequiredService<ReadPhoto>().RunAsync(file, context.RequestAborted);
                if (photo is null)
                {
                    return Results.NotFound();
                }

                context.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
                return Results.Bytes(photo.Content, PhotoKindWords.MediaType(photo.Kind));
            }
        );
}
