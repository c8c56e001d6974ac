namespace Slowglow.Workshop.Timeline;

/// <param name="File">Name in the shop's folder of photographs: hash of its content, with its ending.</param>
/// <param name="Caption">What it shows; may be empty.</param>
/// <param name="Bytes">Size of the file.</param>
public sealed record Photo(string File, string Caption, long Bytes);
