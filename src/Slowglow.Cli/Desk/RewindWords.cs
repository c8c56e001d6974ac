using Slowglow.Cli.Commands;
using Slowglow.Power.Rewinding;
using Slowglow.Quantities;

namespace Slowglow.Cli.Desk;

/// <summary>Options of <c>rewind</c> as the room takes them.</summary>
internal static class RewindWords
{
    public static RewindRequest Request(RewindSettings settings) =>
        new()
        {
            Core = settings.Core is { } core ? Core(core) : null,
            Mains = settings.Mains is { } mains ? Mains(mains) : [],
            Limits = new DesignLimits { Class = Class(settings.Class), Steel = Iron(settings.Iron) },
        };

    /// <summary>Lines as given, and those of every file that one names.</summary>
    public static IReadOnlyList<string> Lines(string[] said, Streams streams) =>
        [.. said.SelectMany(s => s.Contains('=') ? [s] : DocumentFile.Read(s, streams).Split('\n'))];

    private static CoreStack Core(string text)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var lamination = words.Length > 0 ? Lamination.Named(words[0]) : null;
        if (lamination is null)
        {
            throw new CannotRunException(
                $"There is no core {text}. Sizes known: {string.Join(", ", Lamination.All.Select(l => l.Name))}; write --core \"EI96 45mm\"."
            );
        }

        var stack = string.Concat(words.Skip(1)).Replace("mm", "", StringComparison.OrdinalIgnoreCase);
        return stack.Length == 0 ? new CoreStack(lamination, lamination.Tongue)
            : QuantityText.TryRead(stack, Unit.None, out var height) && height.Value is > 0 and < 500
                ? new CoreStack(lamination, height.Value)
            : throw new CannotRunException($"'{stack}' is no stack: write its height in millimetres, --core \"EI96 45mm\".");
    }

    private static double[] Mains(string text) =>
        [
            .. text.Split([',', '/', ' '], StringSplitOptions.RemoveEmptyEntries)
                .Where(w => !w.Equals("V", StringComparison.OrdinalIgnoreCase))
                .Select(w =>
                    QuantityText.TryRead(w, Unit.Volt, out var volts) && volts.Value > 0
                        ? volts.Value
                        : throw new CannotRunException($"'{w}' is no mains voltage: write --mains \"100,120,220,230,240\".")
                ),
        ];

    private static InsulationClass Class(string letter) =>
        InsulationClass.Named(letter)
        ?? throw new CannotRunException($"There is no insulation class {letter}: it is A, E, B, F or H, from cool to hot.");

    private static Steel Iron(string word) =>
        word.ToLowerInvariant() switch
        {
            "ordinary" => Steel.Ordinary,
            "good" => Steel.Good,
            "oriented" => Steel.Oriented,
            _ => throw new CannotRunException($"'{word}' is no iron known here: ordinary, good or oriented."),
        };
}
