using System.Text.Json;
using System.Text.Json.Serialization;

namespace Slowglow.Sheets.Devices;

/// <summary>A data file as written: devices of one kind, with what they have in common said once.</summary>
internal sealed record DeviceFile
{
    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        ReadCommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true,
        Converters = { new JsonStringEnumConverter<DeviceKind>(allowIntegerValues: false) },
    };

    public required DeviceKind Kind { get; init; }

    /// <summary>Pinouts that several devices share, by a name of the file's own.</summary>
    public IReadOnlyDictionary<string, string> Pinouts { get; init; } = new Dictionary<string, string>();

    /// <summary>Holds for each device of the file unless the device says otherwise.</summary>
    public DeviceEntry Common { get; init; } = new();

    public required IReadOnlyList<DeviceEntry> Devices { get; init; }

    /// <summary>The file's devices, unchecked.</summary>
    /// <exception cref="JsonException">The text is not such a file.</exception>
    public static IReadOnlyList<Device> Read(string json)
    {
        var file = JsonSerializer.Deserialize<DeviceFile>(json, Options) ?? throw new JsonException("the file is empty");
        return [.. file.Devices.SelectMany(file.ToDevices)];
    }

    private IEnumerable<Device> ToDevices(DeviceEntry entry)
    {
        var device = ToDevice(entry);
        yield return device;
        foreach (var (type, limits) in entry.Near)
        {
            yield return device.Like(type) with
            {
                Limits = limits,
            };
        }
    }

    private Device ToDevice(DeviceEntry entry)
    {
        var pinout = entry.Pinout ?? Common.Pinout ?? "";
        return new Device
        {
            Type = entry.Type,
            AlsoCalled = entry.AlsoCalled,
            Kind = Kind,
            Pinout = Pinout.Read(Pinouts.GetValueOrDefault(pinout, pinout)),
            Law = Merge(Common.Law, entry.Law),
            Spread = Merge(Common.Spread, entry.Spread),
            Limits = Merge(Common.Limits, entry.Limits),
            Source = string.Join(" ", new[] { entry.Source, Common.Source }.Where(s => s.Length > 0)),
        };
    }

    private static Dictionary<string, double> Merge(
        IReadOnlyDictionary<string, double> common,
        IReadOnlyDictionary<string, double> own
    )
    {
        var both = new Dictionary<string, double>(common);
        foreach (var (name, value) in own)
        {
            both[name] = value;
        }

        return both;
    }
}
