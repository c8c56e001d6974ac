using Slowglow.Sheets.Devices;

namespace Slowglow.Sheets;

/// <summary>A kind of part as the sheet's reader knows it.</summary>
/// <param name="Words">First words that settle the kind.</param>
/// <param name="Letters">Designator letters.</param>
/// <param name="Devices">Kinds of type numbers that make a part of this kind; empty where it has values instead.</param>
public sealed record KindOfPart(
    string Name,
    IReadOnlyList<string> Words,
    IReadOnlyList<string> Letters,
    IReadOnlyList<DeviceKind> Devices
);
