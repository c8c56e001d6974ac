using Slowglow.Workshop.Money;

namespace Slowglow.Workshop.Timeline;

/// <param name="Limit">"Call me above"; null when there is none any more.</param>
/// <param name="Who">Who said so.</param>
public sealed record LimitChange(Amount? Limit, string Who, Way Way);
