using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Cli.Tables;
using Slowglow.Quantities;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow powerup SHEET</summary>
internal sealed class PowerUpCommand : Command<PowerUpSettings>
{
    public override int Execute(CommandContext context, PowerUpSettings settings, CancellationToken cancellationToken)
    {
        var streams = (Streams)context.Data!;
        double? lamp = settings.Lamp is { } words ? Lamp(words) : null;
        var valvesOut = ValvesOut(settings.Valves);
        var opened = Opened.Sheet(settings.Sheet, streams, settings.Json);
        if (opened.Unit is not { } unit || opened.Wrong)
        {
            return opened.SayWrong();
        }

        using var working = new Working(streams, "Working out the steps");
        var answer = new PlanPowerUp(unit).Run(lamp, valvesOut, cancellationToken);
        working.Dispose();
        opened.Add(settings.Sheet, answer.Findings);
        if (answer.Value is not { } plan)
        {
            return opened.SayWrong();
        }

        if (settings.Json)
        {
            JsonOut.Write(streams, PowerUpJson.From(plan, opened.Findings));
        }
        else
        {
            opened.SayWarnings();
            PowerUpReport.Write(streams.OutConsole(), unit.Sheet, plan);
        }
        return ExitCode.Ran;
    }

    /// <summary>Lamps side by side add up.</summary>
    private static double Lamp(string words) =>
        words
            .Split('+', StringSplitOptions.TrimEntries)
            .Sum(w =>
                QuantityText.TryRead(w, Unit.Watt, out var watts) && watts.Value is >= 5 and <= 2000
                    ? watts.Value
                    : throw new CannotRunException(
                        $"'{w}' is no lamp: write its watts, 5 to 2000, such as --lamp 60W or --lamp 60W+60W."
                    )
            );

    private static bool ValvesOut(string word) =>
        word.ToLowerInvariant() switch
        {
            "out" => true,
            "in" => false,
            _ => throw new CannotRunException($"'{word}' says nothing of the valves: write --valves out or --valves in."),
        };
}
