using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Cli.Tables;
using Slowglow.Power.Energy;
using Slowglow.Sheets;
using Spectre.Console;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow discharge SHEET</summary>
internal sealed class DischargeCommand : UnitCommand<FaultedSettings, IReadOnlyList<StoredCharge>>
{
    protected override string Doing => "Working out what the reservoirs hold";

    protected override Parsed<IReadOnlyList<StoredCharge>> Ask(
        BenchUnit unit,
        Opened opened,
        FaultedSettings settings,
        CancellationToken cancel
    )
    {
        var read = settings.Faults.Select(w => FaultReader.Read(w, unit.Circuit)).ToArray();
        return read.Any(r => r.Value is null)
            ? new(null, [.. read.SelectMany(r => r.Findings)])
            : new(new StressUnit(unit).Charges([.. read.Select(r => r.Value).OfType<Fault>()], cancel), []);
    }

    protected override object Json(
        IReadOnlyList<StoredCharge> answer,
        FaultedSettings settings,
        IReadOnlyList<DocumentFinding> findings
    ) => DischargeJson.From(answer, findings);

    protected override void Report(
        IAnsiConsole console,
        BenchUnit unit,
        IReadOnlyList<StoredCharge> answer,
        FaultedSettings settings
    ) => DischargeReport.Write(console, unit.Sheet, answer);
}
