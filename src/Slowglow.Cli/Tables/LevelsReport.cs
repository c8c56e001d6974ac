using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Cli.Desk;
using Slowglow.Sheets;
using Spectre.Console;

namespace Slowglow.Cli.Tables;

/// <summary>The answer of <c>levels</c> for people.</summary>
internal static class LevelsReport
{
    /// <summary>Loads above this are other equipment; watts into them tell nobody anything.</summary>
    private const double SmallestTellingWatts = 0.01;

    public static void Write(IAnsiConsole console, Sheet sheet, LevelsAnswer answer)
    {
        var state = answer.Faults.Count == 0 ? "healthy" : string.Join(" and ", answer.Faults.Select(FaultWords.Say));
        console.Heading($"{sheet.Unit}, {state}, {SetupLine.Say(answer.Setup, sheet)}");
        if (answer.Channels.Count == 0)
        {
            console.Say(
                answer.Setup.PowerOff
                    ? "With the power off there are no levels."
                    : "The sheet names no signal path; add a signal entry with in and out."
            );
            return;
        }

        foreach (var sentence in answer.Words)
        {
            console.Say(sentence);
        }

        for (var i = 0; i < answer.Channels.Count; i++)
        {
            Channel(console, answer.Channels[i], answer.Healthy?[i]);
            CharacterReport.Write(console, answer.Characters[i], answer.HealthyCharacters?[i]);
        }

        ConcernReport.Write(console, answer.Concerns);
    }

    private static void Channel(IAnsiConsole console, ChannelLevels channel, ChannelLevels? healthy)
    {
        console.Heading($"{LevelWords.NameOf(channel.Channel)}, {Figures.Say(channel.InputVolts, "V")} at 1 kHz in");
        var summary = healthy is null ? Layout.Table("", ">Figure") : Layout.Table("", ">Figure", ">Healthy");
        Line(summary, "Level at the output", channel, healthy, c => c.LevelVolts, "V");
        Line(summary, "Clean up to (5 % distortion)", channel, healthy, c => c.CleanVolts, "V");
        if (channel.CleanWatts >= SmallestTellingWatts || healthy?.CleanWatts >= SmallestTellingWatts)
        {
            Line(summary, "  into the load", channel, healthy, c => c.CleanWatts, "W");
        }
        Line(summary, "  with the generator at", channel, healthy, c => c.CleanInputVolts, "V");
        Line(summary, "Hum, no signal", channel, healthy, c => c.HumVolts, "V");
        Line(summary, "DC at the output", channel, healthy, c => MeterSteps(c.OffsetVolts), "V");
        console.Write(summary);
        Stages(console, channel, healthy);
    }

    /// <summary>Rounded to the finest step of a meter, so that a blocked output reads 0 V.</summary>
    private static double MeterSteps(double volts) => double.IsFinite(volts) ? Math.Round(volts, 4) : volts;

    private static void Line(
        Table table,
        string what,
        ChannelLevels channel,
        ChannelLevels? healthy,
        Func<ChannelLevels, double> figure,
        string unit
    )
    {
        if (healthy is null)
        {
            table.Row(what, Figures.Say(figure(channel), unit));
        }
        else
        {
            table.Row(what, Figures.Say(figure(channel), unit), Figures.Say(figure(healthy), unit));
        }
    }

    private static void Stages(IAnsiConsole console, ChannelLevels channel, ChannelLevels? healthy)
    {
        var table = healthy is null
            ? Layout.Table("Along the path", ">Level", ">Times")
            : Layout.Table("Along the path", ">Level", ">Times", ">Healthy", ">Times");
        for (var i = 0; i < channel.Stages.Count; i++)
        {
            List<string> cells =
            [
                channel.Stages[i].Where,
                .. Cells(channel.Stages[i]),
                .. healthy is null ? [] : Cells(healthy.Stages[i]),
            ];
            table.Row([.. cells]);
        }
        console.Write(table);
    }

    private static string[] Cells(StageLevel stage) =>
        [Figures.Say(stage.Volts, "V"), double.IsFinite(stage.Gain) ? Figures.Say(stage.Gain, "", 3).Trim() : ""];
}
