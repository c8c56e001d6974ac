using System.Text.RegularExpressions;
using Slowglow.Sheets;
using Slowglow.Sheets.Devices;

namespace Slowglow.Bench.Writing;

/// <summary>What can be offered while a sheet is typed: the reader's own words, the device library with its pins, and stages.</summary>
public sealed partial record OfferedWords(
    IReadOnlyList<string> Sections,
    IReadOnlyList<OfferedKind> Kinds,
    IReadOnlyList<OfferedDevice> Devices,
    IReadOnlyList<Stage> Stages
)
{
    public static OfferedWords All { get; } =
        new(
            SheetWords.Sections,
            [.. SheetWords.Kinds.Select(k => new OfferedKind(k.Name, k.Words, k.Letters, [.. k.Devices.Select(Said)]))],
            [.. DeviceLibrary.Shipped.All.Select(Offered)],
            Stage.All
        );

    /// <summary>"rectifier valve".</summary>
    private static string Said(DeviceKind kind) => Capitals().Replace(kind.ToString(), " $0").Trim().ToLowerInvariant();

    private static OfferedDevice Offered(Device device) =>
        new(
            device.Type,
            device.AlsoCalled,
            Said(device.Kind),
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
