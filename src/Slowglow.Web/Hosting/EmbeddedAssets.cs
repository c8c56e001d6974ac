using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Net.Http.Headers;
using Slowglow.Drawing;

namespace Slowglow.Web.Hosting;

/// <summary>Serves styles and scripts out of this assembly, so that they are there however and wherever the program was started.</summary>
internal static class EmbeddedAssets
{
    private const string Prefix = "assets/";

    public static void Map(WebApplication app)
    {
        var assembly = typeof(EmbeddedAssets).Assembly;
        foreach (var name in assembly.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)))
        {
            using var stream = assembly.GetManifestResourceStream(name)!;
            using var bytes = new MemoryStream();
            stream.CopyTo(bytes);
            var file = name[Prefix.Length..];
            Map(app, file == "blazor.web.js" ? "/_framework/blazor.web.js" : "/assets/" + file, bytes.ToArray(), TypeOf(file));
        }

        Map(app, "/assets/drawing.css", Encoding.UTF8.GetBytes(ServiceDrawing.StyleSheet), TypeOf("drawing.css"));
    }

    private static void Map(WebApplication app, string path, byte[] bytes, string type)
    {
        var tag = new EntityTagHeaderValue('"' + Convert.ToHexString(SHA256.HashData(bytes))[..16] + '"');
        app.MapMethods(
            path,
            ["GET", "HEAD"],
            (HttpContext context) =>
            {
                // Asked for anew each time and answered "unchanged": a newer program is seen at once.
                context.Response.Headers.CacheControl = "no-cache";
                return Results.Bytes(bytes, type, entityTag: tag);
            }
        );
    }

    private static string TypeOf(string file) =>
        Path.GetExtension(file) switch
        {
            ".css" => "text/css; charset=utf-8",
            ".js" => "text/javascript; charset=utf-8",
            ".svg" => "image/svg+xml",
            _ => "application/octet-stream",
        };
}
