namespace Slowglow.Workshop.LookingBack;

/// <summary>How many jobs were ready so long after their last promise.</summary>
/// <param name="Words">"on the day or before", "1 to 3 days late".</param>
public sealed record PromiseBack(string Words, int Jobs);
