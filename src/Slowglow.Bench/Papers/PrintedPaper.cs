namespace Slowglow.Bench.Papers;

/// <summary>A paper as a file.</summary>
/// <param name="Name">File name to save it under.</param>
public sealed record PrintedPaper(string Name, byte[] Pdf);
