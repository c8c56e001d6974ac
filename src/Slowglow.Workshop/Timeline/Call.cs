namespace Slowglow.Workshop.Timeline;

/// <param name="With">Who was spoken with.</param>
/// <param name="Text">What was said.</param>
public sealed record Call(Way Way, string With, string Text);
