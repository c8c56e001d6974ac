namespace Slowglow.Sheets.Devices;

/// <summary>A type number's data: pinout, constants of its law, spread between specimens, limits, and where they come from.</summary>
public sealed record Device
{
    /// <summary>Type number as printed: "12AX7".</summary>
    public required string Type { get; init; }

    /// <summary>Other numbers of the same thing: "ECC83", "7025".</summary>
    public required IReadOnlyList<string> AlsoCalled { get; init; }
    public required DeviceKind Kind { get; init; }
    public required IReadOnlyList<DevicePin> Pinout { get; init; }

    /// <summary>Constants of the law, SI units; names by kind are listed in docs/add-a-device.md.</summary>
    public required IReadOnlyDictionary<string, double> Law { get; init; }

    /// <summary>Relative standard deviation between specimens, by constant of the law.</summary>
    public required IReadOnlyDictionary<string, double> Spread { get; init; }

    /// <summary>Limiting values, SI units: "anodeWatts", "volts", "amps", "heaterVolts", "heaterAmps" ...</summary>
    public required IReadOnlyDictionary<string, double> Limits { get; init; }

    /// <summary>Published source of the figures, with what was fitted to what.</summary>
    public required string Source { get; init; }

    /// <summary>This device under another number, for one that behaves like it ("like: 1N4007" in a sheet).</summary>
    public Device Like(string type) =>
        this with
        {
            Type = type,
            AlsoCalled = [],
            Source = $"Taken to be like the {Type}, pins included; near enough for volts and levels. {Source}",
        };

    /// <summary>A constant of the law; throws when the data file lacks it (checked when the device is read).</summary>
    public double this[string constant] => Law[constant];
}
