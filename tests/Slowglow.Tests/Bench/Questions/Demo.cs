using Slowglow.Bench.Questions;
using Slowglow.Tests.House;

namespace Slowglow.Tests.Bench.Questions;

/// <summary>The demo units, opened once for all tests.</summary>
internal static class Demo
{
    private static readonly Lazy<BenchUnit> TheCombo = new(() => Open("kittiwake-15"));
    private static readonly Lazy<BenchUnit> TheMixer = new(() => Open("saltmarsh-lm2"));
    private static readonly Lazy<BenchUnit> TheMonitor = new(() => Open("heronsgate-m60"));

    public static BenchUnit Combo => TheCombo.Value;
    public static BenchUnit Mixer => TheMixer.Value;
    public static BenchUnit Monitor => TheMonitor.Value;

    private static BenchUnit Open(string name)
    {
        var opened = BenchUnit.From(File.ReadAllText(Path.Combine(Repository.Root, "demo", name, "sheet.yaml")));
        return opened.Value
            ?? throw new InvalidOperationException(string.Join('\n', opened.Findings.Select(f => $"{f.Place} {f.Text}")));
    }
}
