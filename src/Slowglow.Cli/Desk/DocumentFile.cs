using System.Text;

namespace Slowglow.Cli.Desk;

/// <summary>Reads a document from a file, or from standard input.</summary>
internal static class DocumentFile
{
    /// <summary>No sheet typed by hand comes near this; anything larger is some other file.</summary>
    private const int LargestCharacters = 1_000_000;

    /// <summary>Stands for "-" once the words of the command are read.</summary>
    public const string StandardInput = "(standard input)";

    private static readonly UTF8Encoding Strict = new(false, throwOnInvalidBytes: true);

    /// <summary>The text. Throws <see cref="CannotRunException"/> in plain words when there is none to be had.</summary>
    public static string Read(string path, Streams streams)
    {
        try
        {
            using var file = path == StandardInput ? null : Open(path);
            return ReadAll(file ?? streams.In, path);
        }
        catch (DecoderFallbackException)
        {
            throw new CannotRunException($"{path} is not a text file (UTF-8). A sheet or readings document is plain text.");
        }
        catch (UnauthorizedAccessException)
        {
            throw new CannotRunException($"{path} may not be read: its permissions do not allow it.");
        }
        catch (IOException)
        {
            throw new CannotRunException($"{path} cannot be read: the disk or the network drive does not give it.");
        }
    }

    private static StreamReader Open(string path)
    {
        if (Directory.Exists(path))
        {
            throw new CannotRunException($"{path} is a folder. Name the document itself.{Offer(path)}");
        }

        if (path.Length == 0 || path.Contains('\0') || !File.Exists(path))
        {
            throw new CannotRunException(
                $"There is no file {(path.Length == 0 ? "\"\"" : path)}.{Offer(Path.GetDirectoryName(path))}"
            );
        }
        return new StreamReader(path, Strict);
    }

    private static string Offer(string? folder)
    {
        folder = string.IsNullOrEmpty(folder) ? "." : folder;
        var near = Directory.Exists(folder) ? Directory.EnumerateFiles(folder, "*.yaml").Order().Take(5).ToArray() : [];
        return near.Length == 0 ? "" : $" There is: {string.Join(", ", near.Select(n => Path.GetRelativePath(".", n)))}.";
    }

    private static string ReadAll(TextReader reader, string name)
    {
        var buffer = new char[LargestCharacters + 1];
        var length = reader.ReadBlock(buffer, 0, buffer.Length);
        if (length > LargestCharacters)
        {
            throw new CannotRunException($"{name} is too large: a document may have up to 1,000,000 characters.");
        }

        var text = new string(buffer, 0, length);
        return text.Contains('\0')
            ? throw new CannotRunException($"{name} is not a text file. A sheet or readings document is plain text.")
            : text;
    }
}
