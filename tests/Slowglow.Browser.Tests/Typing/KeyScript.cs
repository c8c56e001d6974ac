using System.Text.RegularExpressions;

namespace Slowglow.Browser.Tests.Typing;

/// <summary>
/// Keystrokes written down: letters as they are; [LABEL] one Tab, once the list offers that first; ~ a Tab to the next figure of a stage;
/// ⏎ Enter; &lt;KEY*N&gt; a named key, N times. Line ends of the file count for nothing.
/// </summary>
internal static partial class KeyScript
{
    public static IReadOnlyList<KeyPress> Read(string name)
    {
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Typing", name)).ReplaceLineEndings("\n");
        return [.. text.Split('\n').SelectMany(line => Token().Matches(line)).SelectMany(m => Presses(m))];
    }

    /// <summary>Keystrokes of a text typed with nothing offered: one space for several, the indentation by the editor.</summary>
    public static int LetterByLetter(string text) =>
        text.Split('\n')
            .Select(l => Spaces().Replace(l.Trim(), " "))
            .Where(l => l.Length > 0)
            .Sum(l => l.Length + l.Count(IsShifted) + 1);

    private static IEnumerable<KeyPress> Presses(Match token)
    {
        if (token.Groups["offered"] is { Success: true } offered)
        {
            return [new("Tab", 1, offered.Value)];
        }

        if (token.Groups["key"] is { Success: true } key)
        {
            var times = token.Groups["times"] is { Success: true } n
                ? int.Parse(n.Value, System.Globalization.CultureInfo.InvariantCulture)
                : 1;
            // A key held for another one is a keystroke of its own.
            return Enumerable.Repeat(new KeyPress(key.Value, key.Value.Split('+').Length, null), times);
        }

        return token.Value switch
        {
            "~" => [new("Tab", 1, null)],
            "⏎" => [new("Enter", 1, null)],
            // Two keys on the keyboard where the letter stands above another.
            var letter => [new(letter, IsShifted(letter[0]) ? 2 : 1, null)],
        };
    }

    private static bool IsShifted(char letter) => char.IsUpper(letter) || "{}:>#&".Contains(letter, StringComparison.Ordinal);

    [GeneratedRegex(" +", RegexOptions.CultureInvariant)]
    private static partial Regex Spaces();

    [GeneratedRegex(@"\[(?<offered>[^\]]+)\]|<(?<key>[A-Z][\w+]+)(\*(?<times>\d+))?>|.", RegexOptions.CultureInvariant)]
    private static partial Regex Token();
}
