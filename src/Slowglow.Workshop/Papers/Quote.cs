namespace Slowglow.Workshop.Papers;

/// <summary>What the repair would cost, in one or more ways.</summary>
/// <param name="ValidUntil">Last day on which it can be accepted at these prices.</param>
/// <param name="Note">What the customer ought to know; may be empty.</param>
public sealed record Quote(IReadOnlyList<QuoteOption> Options, DateOnly Day, DateOnly ValidUntil, string Note)
{
    public QuoteOption? Named(string name) => Options.FirstOrDefault(o => o.Name == name);
}
