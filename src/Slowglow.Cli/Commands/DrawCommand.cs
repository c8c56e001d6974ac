using System.Text;
using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Cli.Json;
using Slowglow.Drawing;
using Spectre.Console.Cli;

namespace Slowglow.Cli.Commands;

/// <summary>slowglow draw SHEET</summary>
internal sealed class DrawCommand : Command<DrawSettings>
{
    public override int Execute(CommandContext context, DrawSettings settings, CancellationToken cancellationToken)
    {
        var streams = (Streams)context.Data!;
        var style = Style(settings.Resistors);
        var opened = Opened.Sheet(settings.Sheet, streams, settings.Json);
        var chosen = opened.Chosen(settings.Setups, opened.KnownSetups(settings.Readings));
        if (opened.Unit is not { } unit || opened.Wrong)
        {
            return opened.SayWrong();
        }

        using var working = new Working(streams, "Drawing");
        var drawing = new DrawUnit(unit).Run(chosen[0], style, cancellationToken);
        working.Dispose();
        if (settings.Out is { } file)
        {
            Write(file, drawing.Svg);
        }

        if (settings.Json)
        {
            JsonOut.Write(streams, DrawingJson.From(drawing, settings.Out, opened.Findings));
            return ExitCode.Ran;
        }

        opened.SayWarnings();
        if (settings.Out is { } written)
        {
            streams.Out.WriteLine(
                $"{written}: {Count(drawing.Crossings, "crossing")}, {Count(drawing.Tags, "net name")} in place of wires."
            );
        }
        else
        {
            streams.Out.Write(drawing.Svg);
        }
        return ExitCode.Ran;
    }

    private static string Count(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";

    private static DrawingStyle Style(string word) =>
        word switch
        {
            "box" => new DrawingStyle(),
            "zigzag" => new DrawingStyle(Zigzag: true),
            _ => throw new CannotRunException($"--resistors is '{word}'; it takes box or zigzag."),
        };

    private static void Write(string file, string svg)
    {
        try
        {
            File.WriteAllText(file, svg, new UTF8Encoding(false));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new CannotRunException($"{file} could not be written: is there such a folder, and may you write there?");
        }
    }
}
