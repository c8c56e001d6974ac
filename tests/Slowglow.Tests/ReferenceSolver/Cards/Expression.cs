namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Pieces of expressions for the reference solver's own sources.</summary>
internal static class Expression
{
    /// <summary>ln(1 + e^x) written so that nothing overflows; the library differentiates abs and max wrongly at zero.</summary>
    public static string Softplus(string x) => $"(({x})>40?({x}):ln(1+exp(min({x},40))))";
}
