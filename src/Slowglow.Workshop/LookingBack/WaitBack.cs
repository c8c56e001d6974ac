using Slowglow.Workshop.Jobs;

namespace Slowglow.Workshop.LookingBack;

/// <summary>How long jobs waited for one thing, in days.</summary>
/// <param name="Mean">Over all jobs, those that never waited for it included: the four means add up to the mean stay.</param>
/// <param name="Median">Half of the jobs waited longer.</param>
/// <param name="Slowest">One job in ten waited longer.</param>
public sealed record WaitBack(WaitsFor For, double Mean, double Median, double Slowest);
