using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Sheets;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>A command that asks one question of one unit: opens the sheet, says that it is at work, and answers as JSON or for people.</summary>
/// <typeparam name="TSettings">What it takes.</typeparam>
/// <typeparam name="TAnswer">What it gives.</typeparam>
internal abstract class UnitCommand<TSettings, TAnswer> : Command<TSettings>
    where TSettings : SheetSettings
    where TAnswer : class
{
    /// <summary>"Trying every offer".</summary>
    protected abstract string Doing { get; }

    public sealed override int Execute(CommandContext context, TSettings settings, CancellationToken cancellationToken)
    {
        var streams = (Streams)context.Data!;
        Understand(settings, streams);
        var opened = Opened.Sheet(settings.Sheet, streams, settings.Json);
        if (opened.Unit is not { } unit || opened.Wrong)
        {
            return opened.SayWrong();
        }

        var answer = AskAtWork(unit, opened, settings, streams, cancellationToken);
        opened.Add("command line", answer.Findings);
        if (answer.Value is not { } value || opened.Wrong)
        {
            return opened.SayWrong();
        }

        if (settings.Json)
        {
            JsonOut.Write(streams, Json(value, settings, opened.Findings));
        }
        else
        {
            opened.SayWarnings();
            Report(streams.OutConsole(), unit, value, settings);
        }
        return ExitCode.Ran;
    }

    /// <summary>Understands the options before any work; throws <see cref="CannotRunException"/> where one makes no sense.</summary>
    protected virtual void Understand(TSettings settings, Streams streams) { }

    /// <summary>The answer, or findings about what was said on the command line.</summary>
    protected abstract Parsed<TAnswer> Ask(BenchUnit unit, Opened opened, TSettings settings, CancellationToken cancel);

    /// <summary>What JSON holds.</summary>
    protected abstract object Json(TAnswer answer, TSettings settings, IReadOnlyList<DocumentFinding> findings);

    /// <summary>For people.</summary>
    protected abstract void Report(IAnsiConsole console, BenchUnit unit, TAnswer answer, TSettings settings);

    private Parsed<TAnswer> AskAtWork(
        BenchUnit unit,
        Opened opened,
        TSettings settings,
        Streams streams,
        CancellationToken cancel
    )
    {
        using var working = new Working(streams, Doing);
        return Ask(unit, opened, settings, cancel);
    }
}
