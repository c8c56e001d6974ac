namespace Slowglow.Workshop.Photos;

/// <summary>Kinds of picture that every browser shows.</summary>
public enum PhotoKind
{
    Jpeg,
    Png,
    WebP,
}
