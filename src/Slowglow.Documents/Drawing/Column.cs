namespace Slowglow.Documents.Drawing;

/// <summary>A column of a table.</summary>
/// <param name="Share">Of the width, against the other columns.</param>
internal sealed record Column(string Head, double Share, bool Right = false);
