using System.ComponentModel;
using Slowglow.Bench.Rehearsals;
using Slowglow.Cli.Desk;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>What <c>rehearse</c> takes.</summary>
internal sealed class RehearseSettings : SheetSettings
{
    private const int MostCases = 100_000;

    [CommandOption("--cases <N>")]
    [Description("Units with one hidden fault.")]
    [DefaultValue(20)]
    public int Cases { get; init; } = 20;

    [CommandOption("--doubles <N>")]
    [Description("Units with two hidden faults. Default: a tenth of --cases.")]
    public int? Doubles { get; init; }

    [CommandOption("--wrong <N>")]
    [Description("Units with a part of the wrong value. Default: a tenth of --cases.")]
    public int? Wrong { get; init; }

    [CommandOption("--bridges <N>")]
    [Description("Units with a solder bridge, which the program does not weigh. Default: none.")]
    [DefaultValue(0)]
    public int Bridges { get; init; }

    [CommandOption("--seed <S>")]
    [Description("The same seed hides the same faults in the same units.")]
    [DefaultValue(1)]
    public int Seed { get; init; } = 1;

    [CommandOption("--by <WHO>")]
    [Description("Who chooses the readings: program, halving, random or cheapest.")]
    [DefaultValue("program")]
    public string By { get; init; } = "program";

    [CommandOption("--draw <HOW>")]
    [Description("How faults are drawn: priors (as often as they happen) or uniform (every part alike).")]
    [DefaultValue("priors")]
    public string Draw { get; init; } = "priors";

    [CommandOption("--readings <N>")]
    [Description("Readings after which a unit is given up.")]
    [DefaultValue(20)]
    public int Readings { get; init; } = 20;

    /// <summary>The request, or a plain word on what is wrong with the options.</summary>
    public RehearsalRequest Request() =>
        new()
        {
            Cases = Count("--cases", Cases, 1),
            Doubles = Count("--doubles", Doubles ?? Cases / 10, 0),
            WrongValues = Count("--wrong", Wrong ?? Cases / 10, 0),
            Bridges = Count("--bridges", Bridges, 0),
            Seed = Seed,
            By = Word<Strategy>("--by", By),
            Draw = Word<FaultDraw>("--draw", Draw),
            Rules = new() { MostReadings = Count("--readings", Readings, 1) },
        };

    private static int Count(string option, int value, int least) =>
        value >= least && value <= MostCases
            ? value
            : throw new CannotRunException($"{option} {value} is no count: it would be {least} to {MostCases}.");

    private static T Word<T>(string option, string word)
        where T : struct, Enum =>
        Array.Find(Enum.GetNames<T>(), n => n.Equals(word, StringComparison.OrdinalIgnoreCase)) is { } name
            ? Enum.Parse<T>(name)
            : throw new CannotRunException(
                $"{option} {word} is not known; it would be one of {string.Join(", ", Enum.GetNames<T>()).ToLowerInvariant()}."
            );
}
