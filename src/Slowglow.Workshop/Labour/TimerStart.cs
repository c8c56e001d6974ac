namespace Slowglow.Workshop.Labour;

/// <param name="Rate">Name of a labour rate.</param>
/// <param name="What">What is being done.</param>
public sealed record TimerStart(string Rate, string What);
