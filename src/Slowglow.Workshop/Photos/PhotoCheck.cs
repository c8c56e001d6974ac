using System.Globalization;

namespace Slowglow.Workshop.Photos;

/// <summary>Looks a file over by what is in it: what it is called proves nothing.</summary>
public static class PhotoCheck
{
    /// <summary>The largest file taken, bytes.</summary>
    public const long MostBytes = 20_000_000;

    /// <summary>A job of more photographs than this is a film.</summary>
    public const int MostAtBooking = 12;

    private const string Right = "A photograph as JPEG, PNG or WebP, whole.";

    /// <summary>What keeps a file of that size from being taken; null when nothing does.</summary>
    public static Objection? LookSize(string name, long bytes) =>
        bytes > MostBytes
            ? new(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"\"{Short(name)}\" has {bytes / 1e6:0.#} MB, too much for a photograph."
                ),
                string.Create(CultureInfo.InvariantCulture, $"Up to {MostBytes / 1e6:0} MB: let the camera take a smaller size.")
            )
            : null;

    /// <summary>Which kind of picture it is, or why it is none.</summary>
    /// <param name="name">Only said in the objection.</param>
    public static (PhotoKind? Kind, Objection? Wrong) Look(string name, ReadOnlySpan<byte> content)
    {
        if (LookSize(name, content.Length) is { } large)
        {
            return (null, large);
        }

        if (PictureBytes.IsHeic(content))
        {
            return (
                null,
                new($"\"{Short(name)}\" is in the HEIC format, which not every browser shows.", "Let the camera write JPEG.")
            );
        }

        if (PictureBytes.KindOf(content) is not { } kind)
        {
            return (null, new($"\"{Short(name)}\" is not a photograph, whatever its name says.", Right));
        }

        return PictureBytes.IsWhole(kind, content)
            ? (kind, null)
            : (null, new($"\"{Short(name)}\" is cut short or damaged.", $"{Right} Take it or send it again."));
    }

    private static string Short(string name) => name.Length > 60 ? name[..60] + "..." : name;
}
