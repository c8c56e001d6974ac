namespace Slowglow.Web.Hosting;

/// <summary>What the sheet's page sends.</summary>
/// <param name="Window">The window that it was typed in.</param>
/// <param name="BasedOn">Number of the sheet that it was typed over; null = none.</param>
/// <param name="OverNewer">The person was told of a newer version and saves after it.</param>
internal sealed record TypedText(string Text, string? Window = null, int? BasedOn = null, bool OverNewer = false);
