using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.Drawing;
using Slowglow.Tests.House;
using Xunit;

namespace Slowglow.Tests.Circuits.Solved;

/// <summary>
/// Every single fault of every demo sheet: hardly a world is to be found without a steady state, and those are known by name. Each of them is a loop that
/// lost its hold on direct current (an output stage without its driver, a bridge diode under a direct-coupled amplifier) or an oscillation.
/// </summary>
public sealed class FailedSheetsTests
{
    private static readonly Dictionary<string, string[]> Restless = new()
    {
        ["heronsgate-m60"] =
        [
            "T1 pin 5 open",
            "D4 open",
            "R5 wrong value fitted, 100 times the drawing's",
            "Q8 c open",
            "Q8 b open",
            "Q8 e open",
            "R17 open",
        ],
        ["siskin-5r"] = ["V1 section 2 h-k short"],
    };

    public static TheoryData<string> Sheets =>
        [
            .. Directory
                .GetFiles(Path.Combine(Repository.Root, "demo"), "*.yaml", SearchOption.AllDirectories)
                .Select(NameOf)
                .OfType<string>(),
        ];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void All_but_those_named_settle(string name)
    {
        var circuit = Circuit.From(DrawnSheets.Sheet(name)).Value!;
        IReadOnlyList<IReadOnlyList<Fault>> faults = [.. circuit.Faults.Select(f => new[] { f })];
        var net = circuit.Sheet.Nets.Names.First(n => n != NetTable.Ground);
        var answers = new Worlds(circuit).Ask(
            Setup.Default,
            faults,
            [new Probe(net, net, NetTable.Ground, ProbeKind.Dc)],
            MeterClass.Handheld,
            cancel: TestContext.Current.CancellationToken
        );

        var restless = faults
            .Zip(answers)
            .Where(w => w.Second[0].Kind == AnswerKind.Unsettled)
            .Select(w => w.First[0].ToString());
        Assert.Empty(restless.Except(Restless.GetValueOrDefault(name, [])));
    }

    private static string? NameOf(string path) =>
        Path.GetFileName(Path.GetDirectoryName(path)!) == "sheets" ? Path.GetFileNameWithoutExtension(path)
        : Path.GetFileName(path) == "sheet.yaml" ? Path.GetFileName(Path.GetDirectoryName(path))
        : null;
}
