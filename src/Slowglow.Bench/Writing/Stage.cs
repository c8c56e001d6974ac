using System.Text.RegularExpressions;

namespace Slowglow.Bench.Writing;

/// <summary>
/// A stage in a common form, as lines of a sheet. In them #R1 stands for the next free number of its letter, and ${1:100k} for a figure that is
/// asked for, with what is usual; values are common practice and no source is claimed for them.
/// </summary>
public sealed partial record Stage(string Name, string Lines)
{
    /// <summary>Those that come with the program, by name.</summary>
    public static IReadOnlyList<Stage> All { get; } = [.. Read().OrderBy(s => s.Name, StringComparer.Ordinal)];

    /// <summary>The lines with every figure as it is offered and the numbers as they stand here.</summary>
    public string AsOffered() => Numbered().Replace(Field().Replace(Lines, "$1"), "$1");

    private static IEnumerable<Stage> Read()
    {
        var assembly = typeof(Stage).Assembly;
        foreach (var name in assembly.GetManifestResourceNames().Where(n => n.EndsWith(".stage", StringComparison.Ordinal)))
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
            var title = reader.ReadLine()!;
            yield return new(title, reader.ReadToEnd());
        }
    }

    [GeneratedRegex(@"\$\{\d+:([^}]*)\}", RegexOptions.CultureInvariant)]
    private static partial Regex Field();

    [GeneratedRegex(@"#([A-Z]+\d+)", RegexOptions.CultureInvariant)]
    private static partial Regex Numbered();
}
