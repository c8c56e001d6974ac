using Slowglow.Sheets;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>Sheets invented for the comparison, of all families of parts, and the demo sheets beside them.</summary>
internal static class CircuitFiles
{
    public static readonly string[] Invented =
    [
        "push-pull-cathode-bias",
        "push-pull-fixed-bias",
        "single-ended",
        "transistor-power",
        "op-amp-preamp",
        "hybrid",
        "small-signal",
        "tape-replay",
        "regulated-supply",
        "diode-clipper",
        "two-channel",
    ];

    public static readonly string[] Demo = ["kittiwake-15", "saltmarsh-lm2", "heronsgate-m60"];

    public static Sheet Read(string name)
    {
        if (Demo.Contains(name))
        {
            return DemoSheets.Read(name);
        }

        var path = Path.Combine(DemoSheets.Root(), "tests", "reference", "circuits", name + ".yaml");
        var parsed = SheetReader.Read(File.ReadAllText(path));
        return parsed.Value
            ?? throw new InvalidOperationException(string.Join('\n', parsed.Findings.Select(f => $"{f.Place}: {f.Text}")));
    }
}
