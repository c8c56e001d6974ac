using System.Text.Json;

namespace Slowglow.Sheets.Devices;

/// <summary>All type numbers known, from the data files beside this class. Safe for use from many threads.</summary>
public sealed class DeviceLibrary
{
    private static readonly Lazy<DeviceLibrary> FromFiles = new(() => new DeviceLibrary(ReadFiles()));

    private readonly Dictionary<string, Device> byName = [];

    /// <summary>A library of checked devices; where two claim a name, a type number goes before an "also called".</summary>
    public DeviceLibrary(IEnumerable<Device> devices)
    {
        All = [.. devices];
        foreach (var device in All)
        {
            byName.TryAdd(TypeNumber.Plain(device.Type), device);
        }

        foreach (var device in All)
        {
            foreach (var other in device.AlsoCalled)
            {
                byName.TryAdd(TypeNumber.Plain(other), device);
            }
        }
    }

    /// <summary>The library shipped with the program, read at first use.</summary>
    /// <exception cref="InvalidDataException">A shipped file is wrong: a bug, which the tests catch.</exception>
    public static DeviceLibrary Shipped => FromFiles.Value;

    public IReadOnlyList<Device> All { get; }

    /// <summary>
    /// The device of that type number or one of its other numbers; null when unknown. Case, spaces and hyphens do not count,
    /// twins may be written together ("12AX7/ECC83"), and Japanese numbers without their 2S ("C945").
    /// </summary>
    public Device? Find(string type)
    {
        var plain = TypeNumber.Plain(type);
        return byName.GetValueOrDefault(plain)
            ?? byName.GetValueOrDefault(TypeNumber.Unabbreviated(plain))
            ?? plain.Split('/').Select(half => byName.GetValueOrDefault(half)).FirstOrDefault(found => found is not null);
    }

    /// <summary>The nearest names, best first, one for each device.</summary>
    public IReadOnlyList<string> Nearest(string type, int count = 3)
    {
        var wanted = TypeNumber.Plain(type);
        return
        [
            .. All.Select(device => NearestName(device, wanted))
                .OrderBy(n => n.Distance)
                .ThenBy(n => n.Name, StringComparer.Ordinal)
                .Take(count)
                .Select(n => n.Name),
        ];
    }

    /// <summary>This library with more devices, which go before those of the same name already in it.</summary>
    public DeviceLibrary With(IEnumerable<Device> devices) => new([.. devices, .. All]);

    /// <summary>The devices of one data file, checked; docs/add-a-device.md has the format.</summary>
    /// <param name="name">What to call the file when it is wrong.</param>
    /// <exception cref="InvalidDataException">Something is missing or impossible; the message says what, by device.</exception>
    public static IReadOnlyList<Device> Read(string name, string json)
    {
        try
        {
            var devices = DeviceFile.Read(json);
            var problems = devices.SelectMany(d => DeviceCheck.Problems(d).Select(p => $"{d.Type}: {p}")).ToList();
            return problems.Count == 0 ? devices : throw new InvalidDataException($"{name}: {string.Join("; ", problems)}");
        }
        catch (Exception e) when (e is JsonException or FormatException)
        {
            throw new InvalidDataException($"{name}: {e.Message}", e);
        }
    }

    private static (string Name, int Distance) NearestName(Device device, string wanted) =>
        device
            .AlsoCalled.Prepend(device.Type)
            .Select(name => (name, TypeNumber.Distance(wanted, TypeNumber.Plain(name))))
            .MinBy(n => n.Item2);

    private static IEnumerable<Device> ReadFiles()
    {
        var assembly = typeof(DeviceLibrary).Assembly;
        foreach (
            var name in assembly.GetManifestResourceNames().Where(n => n.EndsWith(".json", StringComparison.Ordinal)).Order()
        )
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
            foreach (var device in Read(name, reader.ReadToEnd()))
            {
                yield return device;
            }
        }
    }
}
