namespace Slowglow.Tests.ReferenceSolver.Cards;

/// <summary>Pieces of expressions for the reference solver's own sources.</summary>
internal static class Expression
{
    /// <summary>ln(1 + e^x) written so that nothing overflows.</summary>
    public static string Softplus(string x) => $"(max({x},0)+ln(1+exp(-abs({x}))))";
}
