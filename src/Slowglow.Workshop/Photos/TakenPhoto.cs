namespace Slowglow.Workshop.Photos;

/// <summary>A photograph as the camera gave it, not stored yet.</summary>
/// <param name="Caption">What it shows; may be empty.</param>
public sealed record TakenPhoto(byte[] Content, string Caption);
