using System.Runtime.CompilerServices;

namespace Slowglow.Tests.Sheets;

/// <summary>Documents beside these tests.</summary>
internal static class SheetFiles
{
    internal static string Folder { get; } = Path.Combine(Here(), "Data");

    internal static string Text(string name) => File.ReadAllText(Path.Combine(Folder, name));

    private static string Here([CallerFilePath] string file = "") => Path.GetDirectoryName(file)!;
}
