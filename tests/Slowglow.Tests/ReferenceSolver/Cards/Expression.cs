namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Pieces of expressions for the reference solver's own sources.</summary>
internal static class Expression
{
    /// <summary>x where positive, next to nothing where not, with the rounded corner of 20 mV of our valves' laws.</summary>
    public static string Positive(string x) =>
        $"(({x})<0?2e-4/(sqrt(({x})*({x})+4e-4)-({x})):0.5*(({x})+sqrt(({x})*({x})+4e-4)))";

    /// <summary>ln(1 + e^x) written so that nothing overflows; the library differentiates abs and max wrongly at zero.</summary>
    public static string Softplus(string x) => $"(({x})>40?({x}):ln(1+exp(min({x},40))))";

    /// <summary>As a product: the library's own powers have no slope at zero.</summary>
    public static string TanhOfCube(string x) => $"tanh(min({x}*{x}*{x},20))";
}
