using Slowglow.Sheets;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>The sheets under demo/, read.</summary>
internal static class DemoSheets
{
    public static Sheet Read(string folder)
    {
        var parsed = SheetReader.Read(File.ReadAllText(Path.Combine(Root(), "demo", folder, "sheet.yaml")));
        return parsed.Value
            ?? throw new InvalidOperationException(string.Join('\n', parsed.Findings.Select(f => $"{f.Place}: {f.Text}")));
    }

    public static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Slowglow.slnx")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("The tests run outside the source tree.");
        }

        return folder.FullName;
    }
}
