namespace Slowglow.Workshop;

/// <summary>Why a rule of the shop does not let something stand as typed.</summary>
/// <param name="Text">What is wrong, for the person at the counter.</param>
/// <param name="Remedy">What would be right.</param>
public sealed record Objection(string Text, string Remedy);
