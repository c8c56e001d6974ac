namespace Slowglow.Tests.House;

/// <summary>The files of this repository, as they lie on the disk.</summary>
internal static class Repository
{
    private static readonly string[] Passed = ["bin", "obj", ".git", "node_modules", "TestResults", "BenchmarkDotNet.Artifacts"];

    /// <summary>The folder that holds Slowglow.slnx.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>Path inside the repository, with forward slashes.</summary>
    public static string Relative(string path) => Path.GetRelativePath(Root, path).Replace('\\', '/');

    /// <summary>Files below a folder of the repository, build output left out.</summary>
    public static IEnumerable<string> Files(string folder, params string[] endings)
    {
        var start = Path.Combine(Root, folder);
        return Directory.Exists(start) ? Walk(start).Where(f => endings.Any(e => f.EndsWith(e, StringComparison.Ordinal))) : [];
    }

    private static IEnumerable<string> Walk(string folder)
    {
        foreach (var file in Directory.EnumerateFiles(folder))
        {
            yield return file;
        }

        foreach (var below in Directory.EnumerateDirectories(folder).Where(d => !Passed.Contains(Path.GetFileName(d))))
        {
            foreach (var file in Walk(below))
            {
                yield return file;
            }
        }
    }

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Slowglow.slnx")))
            {
                return folder.FullName;
            }
        }
        throw new InvalidOperationException("The tests run outside of the repository.");
    }
}
