namespace Slowglow.Browser.Tests.Typing;

/// <summary>One press.</summary>
/// <param name="Key">As the browser names it.</param>
/// <param name="Strokes">Keystrokes it takes, shift and the like counted.</param>
/// <param name="Offered">What the list has to offer first before it is pressed; null = nothing is waited for.</param>
internal sealed record KeyPress(string Key, int Strokes, string? Offered);
