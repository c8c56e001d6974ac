using Slowglow.Cli.Commands;
using Slowglow.Power.Rewinding;

namespace Slowglow.Cli.Desk;

/// <summary>Options of <c>rewind</c> as the room takes them.</summary>
internal static class RewindWords
{
    public static RewindRequest Request(RewindSettings settings)
    {
        var read = RewindRequestReader.Read(settings.Core ?? "", settings.Mains ?? "", settings.Class, settings.Iron);
        return read.Value ?? throw new CannotRunException(string.Join(" ", read.Findings.Select(f => $"{f.Text} {f.Remedy}")));
    }

    /// <summary>Lines as given, and those of every file that one names.</summary>
    public static IReadOnlyList<string> Lines(string[] said, Streams streams) =>
        [.. said.SelectMany(s => s.Contains('=') ? [s] : DocumentFile.Read(s, streams).Split('\n'))];
}
