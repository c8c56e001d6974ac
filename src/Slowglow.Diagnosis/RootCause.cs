namespace Slowglow.Diagnosis;

/// <summary>What else to look at before the new part goes in.</summary>
/// <param name="Part">Part to check.</param>
/// <param name="Victim">The suspect it would have hurt, or that would have hurt it.</param>
/// <param name="Text">A sentence with figures.</param>
public sealed record RootCause(string Part, string Victim, string Text);
