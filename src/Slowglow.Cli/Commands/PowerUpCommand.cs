using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Cli.Tables;
using Slowglow.Power.PowerUp;
using Slowglow.Sheets;
using Spectre.Console;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow powerup SHEET</summary>
internal sealed class PowerUpCommand : UnitCommand<PowerUpSettings, PowerUpPlan>
{
    protected override string Doing => "Working out the steps";

    protected override void Understand(PowerUpSettings settings, Streams streams)
    {
        Lamp(settings);
        ValvesOut(settings);
    }

    protected override Parsed<PowerUpPlan> Ask(
        BenchUnit unit,
        Opened opened,
        PowerUpSettings settings,
        CancellationToken cancel
    ) => new PlanPowerUp(unit).Run(Lamp(settings), ValvesOut(settings), cancel);

    protected override object Json(PowerUpPlan answer, PowerUpSettings settings, IReadOnlyList<DocumentFinding> findings) =>
        PowerUpJson.From(answer, findings);

    protected override void Report(IAnsiConsole console, BenchUnit unit, PowerUpPlan answer, PowerUpSettings settings) =>
        PowerUpReport.Write(console, unit.Sheet, answer);

    private static double? Lamp(PowerUpSettings settings)
    {
        var read = LampWords.Read(settings.Lamp ?? "");
        return read.Value is { } lamp
            ? lamp.Watts
            : throw new CannotRunException(string.Join(" ", read.Findings.Select(f => $"{f.Text} {f.Remedy}")));
    }

    private static bool ValvesOut(PowerUpSettings settings) =>
        settings.Valves.ToLowerInvariant() switch
        {
            "out" => true,
            "in" => false,
            _ => throw new CannotRunException(
                $"'{settings.Valves}' says nothing of the valves: write --valves out or --valves in."
            ),
        };
}
