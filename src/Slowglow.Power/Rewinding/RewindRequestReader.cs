using Slowglow.Quantities;
using Slowglow.Sheets;

namespace Slowglow.Power.Rewinding;

/// <summary>Reads what is wished of a new transformer, as typed on a page or a command line. Every wish that cannot be gets its finding.</summary>
public static class RewindRequestReader
{
    /// <summary>Taller stacks than this are a slip, millimetres.</summary>
    private const double MostStack = 500;

    /// <param name="core">"EI96 45mm", "EI96" for a square stack; empty = the measured one, or the smallest that does.</param>
    /// <param name="mains">"100,120,220,230,240"; empty = the primary as drawn.</param>
    /// <param name="insulation">Class: A, E, B, F or H.</param>
    /// <param name="iron">"ordinary", "good" or "oriented".</param>
    public static Parsed<RewindRequest> Read(string core, string mains, string insulation, string iron)
    {
        var read = (Core: Core(core.Trim()), Mains: Mains(mains), Class: Class(insulation), Iron: Iron(iron));
        IReadOnlyList<Finding> findings =
        [
            .. read.Core.Findings,
            .. read.Mains.Findings,
            .. read.Class.Findings,
            .. read.Iron.Findings,
        ];
        return findings.Count > 0
            ? new(null, findings)
            : new(
                new RewindRequest
                {
                    Core = read.Core.Value,
                    Mains = read.Mains.Value ?? [],
                    Limits = new DesignLimits { Class = read.Class.Value!, Steel = read.Iron.Value! },
                },
                []
            );
    }

    private static Parsed<CoreStack> Core(string text)
    {
        if (text.Length == 0)
        {
            return new(null, []);
        }

        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (Lamination.Named(words[0]) is not { } lamination)
        {
            var known = string.Join(", ", Lamination.All.Select(l => l.Name));
            return Wrong<CoreStack>($"There is no core {text}.", $"Sizes known: {known}; write EI96 45mm.");
        }

        var stack = string.Concat(words.Skip(1)).Replace("mm", "", StringComparison.OrdinalIgnoreCase);
        return stack.Length == 0 ? new(new CoreStack(lamination, lamination.Tongue), [])
            : QuantityText.TryRead(stack, Unit.None, out var height) && height.Value is > 0 and < MostStack
                ? new(new CoreStack(lamination, height.Value), [])
            : Wrong<CoreStack>($"'{stack}' is no stack.", "Write its height in millimetres: EI96 45mm.");
    }

    private static Parsed<IReadOnlyList<double>> Mains(string text)
    {
        List<double> volts = [];
        var words = text.Split([',', '/', ' '], StringSplitOptions.RemoveEmptyEntries);
        foreach (var word in words.Where(w => !w.Equals("V", StringComparison.OrdinalIgnoreCase)))
        {
            if (!QuantityText.TryRead(word, Unit.Volt, out var read) || !(read.Value > 0))
            {
                return Wrong<IReadOnlyList<double>>($"'{word}' is no mains voltage.", "Write 100,120,220,230,240.");
            }

            volts.Add(read.Value);
        }

        return new(volts, []);
    }

    private static Parsed<InsulationClass> Class(string letter) =>
        InsulationClass.Named(letter) is { } known
            ? new(known, [])
            : Wrong<InsulationClass>($"There is no insulation class {letter}.", "It is A, E, B, F or H, from cool to hot.");

    private static Parsed<Steel> Iron(string word) =>
        word.ToLowerInvariant() switch
        {
            "ordinary" => new(Steel.Ordinary, []),
            "good" => new(Steel.Good, []),
            "oriented" => new(Steel.Oriented, []),
            _ => Wrong<Steel>($"'{word}' is no iron known here.", "It is ordinary, good or oriented."),
        };

    private static Parsed<T> Wrong<T>(string text, string remedy)
        where T : class => new(null, [new(Severity.Error, Place.None, text, remedy)]);
}
