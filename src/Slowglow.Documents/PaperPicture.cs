using System.Globalization;
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

    /// <summary>What stands in the place of a photograph that cannot be printed: which one it is, so that whoever reads the paper can ask for it.</summary>
    /// <param name="number">Among those of the paper, from 1.</param>
    public static string NotPrinted(string caption, int number)
    {
        var which = number.ToString(CultureInfo.InvariantCulture) + (caption.Length > 0 ? $" (\"{caption}\")" : "");
        return $"Photograph {which} could not be printed: its file is of a kind or in a state that the paper cannot take. The shop has it.";
    }
}
