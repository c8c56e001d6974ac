using System.Text.RegularExpressions;
using Slowglow.Sheets;
using Slowglow.Sheets.Devices;

namespace Slowglow.Bench.Writing;

/// <summary>What can be offered while a sheet is typed: the reader's own words, the device library with its pins, and stages.</summary>
public sealed partial record OfferedWords(
    IReadOnlyList<string> Sections,
    IReadOnlyList<KindOfPart> Kinds,
    IReadOnlyList<OfferedDevice> Devices,
    IReadOnlyList<Stage> Stages
)
{
    public static OfferedWords All { get; } =
        new(SheetWords.Sections, SheetWords.Kinds, [.. DeviceLibrary.Shipped.All.Select(Offered)], Stage.All);

    private static OfferedDevice Offered(Device device) =>
        new(
            device.Type,
            device.AlsoCalled,
            Capitals().Replace(device.Kind.ToString(), " $0").Trim().ToLowerInvariant(),
            string.Join(
                ", ",
                device
                    .Pinout.Where(p => p.Electrode is not ("nc" or "ic"))
                    .Select(p => $"{p.Number} {p.Electrode}{(p.Section > 1 ? $" of {p.Section}" : "")}")
            )
        );

    [GeneratedRegex("[A-Z]", RegexOptions.CultureInvariant)]
    private static partial Regex Capitals();
}
