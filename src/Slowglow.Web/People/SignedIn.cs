using System.Security.Claims;

namespace Slowglow.Web.People;

/// <summary>Somebody who signed in, as a request carries it.</summary>
internal static class SignedIn
{
    public const string Cookie = "slowglow-in";
    private const string Token = "token";

    public static ClaimsPrincipal As(string name, string token) =>
        new(new ClaimsIdentity([new(ClaimTypes.Name, name), new(Token, token)], "pin"));

    public static string? TokenOf(ClaimsPrincipal someone) => someone.FindFirst(Token)?.Value;
}
