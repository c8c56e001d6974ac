namespace Slowglow.Web.Desks;

/// <summary>What is being worked out at this moment.</summary>
/// <param name="Fraction">0 to 1; NaN when it cannot be told.</param>
public sealed record WorkUnderWay(string What, double Fraction, DateTimeOffset Since);
