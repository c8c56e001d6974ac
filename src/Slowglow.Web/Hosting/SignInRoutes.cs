using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Slowglow.Bench.People;
using Slowglow.Web.People;

namespace Slowglow.Web.Hosting;

/// <summary>Asks for a PIN where the shop has any, before anything else is shown.</summary>
internal static class SignInRoutes
{
    private const string Page = "/sign-in";

    // Not the page's own address: pages take posts too, and of two that would take it neither does.
    private const string Enter = "/sign-in/enter";
    private static readonly string[] Free = ["/assets/", "/_framework/"];

    /// <summary>Lets a request through, or leads it to the sign-in page.</summary>
    public static async Task GuardAsync(HttpContext context, RequestDelegate next)
    {
        var people = context.RequestServices.GetRequiredService<ShopPeople>();
        Someone.Name = null;
        if ((await people.RulesAsync()).AsksForPin)
        {
            var token = context.Request.Cookies[SignedIn.Cookie];
            if (await people.WhoAsync(token) is { } name)
            {
                context.User = SignedIn.As(name, token!);
                Someone.Name = name;
            }
            else if (!IsFree(context.Request.Path.Value!))
            {
                TurnAway(context);
                return;
            }
        }

        await next(context);
    }

    public static void Map(WebApplication app)
    {
        app.MapPost(
            Enter,
            async (IFormCollection form, HttpContext context, SignIn signIn) =>
            {
                var entered = await signIn.RunAsync(form["who"].ToString(), form["pin"].ToString(), context.RequestAborted);
                var back = OwnPath(form["back"].ToString());
                if (entered.Value is not { } token)
                {
                    return Results.LocalRedirect($"~{Page}?said=wrong&back={Uri.EscapeDataString(back)}");
                }

                context.Response.Cookies.Append(
                    SignedIn.Cookie,
                    token,
                    new CookieOptions
                    {
                        HttpOnly = true,
                        SameSite = SameSiteMode.Strict,
                        IsEssential = true,
                        Path = "/",
                    }
                );
                return Results.LocalRedirect("~" + back);
            }
        );
        app.MapPost(
            "/sign-out",
            (IFormCollection _, HttpContext context, SignIn signIn) =>
            {
                if (context.Request.Cookies[SignedIn.Cookie] is { } token)
                {
                    signIn.Leave(token);
                }

                context.Response.Cookies.Delete(SignedIn.Cookie);
                return Results.LocalRedirect($"~{Page}");
            }
        );
    }

    private static bool IsFree(string path) =>
        path is Page or Enter || Free.Any(f => path.StartsWith(f, StringComparison.Ordinal));

    private static void TurnAway(HttpContext context)
    {
        if (HttpMethods.IsGet(context.Request.Method) && !context.Request.Path.StartsWithSegments("/_blazor"))
        {
            context.Response.Redirect($"{Page}?back={Uri.EscapeDataString(context.Request.Path + context.Request.QueryString)}");
        }
        else
        {
            context.Response.StatusCode = StatusCodes.Status401Unauthorized;
        }
    }

    /// <summary>A path of this page alone: nobody is led elsewhere.</summary>
    private static string OwnPath(string path) =>
        path.StartsWith('/') && !path.StartsWith("//", StringComparison.Ordinal) && !path.Contains('\\', StringComparison.Ordinal)
            ? path
            : "/";
}
