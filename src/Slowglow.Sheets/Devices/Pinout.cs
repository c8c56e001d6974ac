using System.Globalization;

namespace Slowglow.Sheets.Devices;

/// <summary>Pinouts as written in data files: "1:a.1 2:g.1 3:k.1 4:h", pin, electrode, and the section after a dot.</summary>
public static class Pinout
{
    /// <summary>The pins in the order written. A pin without a section is shared where the device has sections, else it is section 1.</summary>
    /// <exception cref="FormatException">The text is not a pinout.</exception>
    public static IReadOnlyList<DevicePin> Read(string text)
    {
        var written = text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(ReadPin).ToList();
        var hasSections = written.Any(p => p.Section > 0);
        return hasSections ? written : [.. written.Select(p => IsShared(p.Electrode) ? p : p with { Section = 1 })];
    }

    /// <summary>Electrodes that carry no signal, or that every section of an envelope shares.</summary>
    private static bool IsShared(string electrode) => electrode is "h" or "ht" or "f" or "nc" or "ic" or "is" or "v+" or "v-";

    private static DevicePin ReadPin(string word)
    {
        var colon = word.IndexOf(':', StringComparison.Ordinal);
        if (colon <= 0 || colon == word.Length - 1)
        {
            throw new FormatException($"'{word}' is not a pin: write number:electrode, such as 6:a or 6:a.2");
        }

        var (number, electrode) = (word[..colon], word[(colon + 1)..]);
        var dot = electrode.LastIndexOf('.');
        return dot < 0
            ? new DevicePin(number, 0, electrode)
            : new DevicePin(number, int.Parse(electrode[(dot + 1)..], CultureInfo.InvariantCulture), electrode[..dot]);
    }
}
