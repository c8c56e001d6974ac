using Slowglow.Documents.Drawing;

namespace Slowglow.Documents;

/// <summary>A photograph on a paper.</summary>
/// <param name="Caption">What it shows; may be empty.</param>
/// <param name="Content">The file, JPEG or PNG; what cannot be printed is named in its place.</param>
public sealed record PaperPicture(string Caption, byte[] Content)
{
    /// <summary>True for a file that can be put on a page.</summary>
    public static bool CanBePrinted(byte[] content)
    {
        using var read = ReadyPicture.Read(content);
        return read is not null;
    }
}
