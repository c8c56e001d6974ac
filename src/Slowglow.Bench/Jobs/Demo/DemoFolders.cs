namespace Slowglow.Bench.Jobs.Demo;

/// <summary>Finds the invented units that come with the program.</summary>
public static class DemoFolders
{
    private const string Name = "demo";

    /// <summary>Folders with a sheet, in the order of their names: beside the program, or up the tree from it, or up from the working folder.</summary>
    public static IReadOnlyList<string> Find() =>
        Up(AppContext.BaseDirectory).Concat(Up(Environment.CurrentDirectory)).Select(Within).FirstOrDefault(f => f.Count > 0)
        ?? [];

    /// <summary>Folders with a sheet in a folder.</summary>
    public static IReadOnlyList<string> Within(string folder) =>
        Directory.Exists(folder)
            ?
            [
                .. Directory
                    .EnumerateDirectories(folder)
                    .Where(d => System.IO.File.Exists(Path.Combine(d, "sheet.yaml")))
                    .Order(StringComparer.Ordinal),
            ]
            : [];

    /// <summary>Path of a file of the demo; null when the demo does not have it.</summary>
    public static string? File(string name) =>
        Up(AppContext.BaseDirectory)
            .Concat(Up(Environment.CurrentDirectory))
            .Where(d => Within(d).Count > 0)
            .Select(d => Path.Combine(d, name))
            .FirstOrDefault(System.IO.File.Exists);

    private static IEnumerable<string> Up(string start)
    {
        for (var at = new DirectoryInfo(start); at is not null; at = at.Parent)
        {
            yield return Path.Combine(at.FullName, Name);
        }
    }
}
