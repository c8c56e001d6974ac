using System.Collections.Concurrent;
using Slowglow.Bench.Questions;
using Slowglow.Tests.ReferenceSolver;

namespace Slowglow.Tests.Diagnosis;

/// <summary>The demo units, each solved once for all tests of this folder.</summary>
internal static class DemoUnits
{
    private static readonly ConcurrentDictionary<string, Lazy<BenchUnit>> Units = new();

    public static BenchUnit Of(string folder) =>
        Units.GetOrAdd(folder, f => new(() => BenchUnit.From(File.ReadAllText(PathOf(f, "sheet.yaml"))).Value!)).Value;

    public static string PathOf(string folder, string file) => Path.Combine(DemoSheets.Root(), "demo", folder, file);
}
