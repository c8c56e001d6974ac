namespace Slowglow.Sheets.Devices;

/// <summary>All type numbers known, from the data files beside this class.</summary>
public sealed class DeviceLibrary
{
    /// <summary>The library shipped with the program.</summary>
    public static DeviceLibrary Shipped { get; } = new([]);

    private readonly Dictionary<string, Device> byName = new(StringComparer.OrdinalIgnoreCase);

    public DeviceLibrary(IEnumerable<Device> devices)
    {
        All = [.. devices];
        foreach (var device in All)
        {
            byName[device.Type] = device;
            foreach (var other in device.AlsoCalled)
            {
                byName.TryAdd(other, device);
            }
        }
    }

    public IReadOnlyList<Device> All { get; }

    /// <summary>The device of that type number or one of its other numbers, any case; null when unknown.</summary>
    public Device? Find(string type) => byName.GetValueOrDefault(type);

    /// <summary>The nearest names, best first.</summary>
    public IReadOnlyList<string> Nearest(string type, int count = 3) => throw new NotSupportedException(type);
}
