namespace Slowglow.Workshop.Photos;

public static class PhotoKindWords
{
    /// <summary>Ending of a file of that kind, without the dot.</summary>
    public static string Ending(PhotoKind kind) =>
        kind switch
        {
            PhotoKind.Jpeg => "jpg",
            PhotoKind.Png => "png",
            _ => "webp",
        };

    /// <summary>Media type as registered with IANA.</summary>
    public static string MediaType(PhotoKind kind) => "image/" + kind.ToString().ToLowerInvariant();
}
