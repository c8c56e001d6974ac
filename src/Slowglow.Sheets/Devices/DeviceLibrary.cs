using System.Text;

namespace Slowglow.Sheets.Devices;

/// <summary>All type numbers known, from the data files beside this class. Safe for use from many threads.</summary>
public sealed class DeviceLibrary
{
    private static readonly Lazy<DeviceLibrary> FromFiles = new(() => new DeviceLibrary(ReadFiles()));

    private readonly IReadOnlyList<LibraryEntry> entries;
    private readonly Dictionary<string, LibraryEntry> byName = [];
    private readonly Lazy<IReadOnlyList<Device>> all;

    /// <summary>A library of checked devices; where two claim a name, a type number goes before an "also called".</summary>
    public DeviceLibrary(IEnumerable<Device> devices)
        : this([.. devices.Select(d => new LibraryEntry(d))]) { }

    private DeviceLibrary(IReadOnlyList<LibraryEntry> entries)
    {
        this.entries = entries;
        all = new(() => Whole(entries));
        foreach (var entry in entries)
        {
            byName.TryAdd(TypeNumber.Plain(entry.Type), entry);
        }

        foreach (var entry in entries)
        {
            foreach (var other in entry.AlsoCalled)
            {
                byName.TryAdd(TypeNumber.Plain(other), entry);
            }
        }
    }

    /// <summary>The library shipped with the program. Its names are read at first use, and each device when it is asked for.</summary>
    /// <exception cref="InvalidDataException">A shipped file is wrong: a bug, which the tests catch.</exception>
    public static DeviceLibrary Shipped => FromFiles.Value;

    /// <summary>Reads the shipped library on another core, so that it is there when the first sheet has been taken apart.</summary>
    internal static void BeginToRead()
    {
        if (!FromFiles.IsValueCreated)
        {
            Task.Run(() => FromFiles.Value);
        }
    }

    /// <summary>Every device, all of them read by the first who asks.</summary>
    public IReadOnlyList<Device> All => all.Value;

    /// <summary>
    /// The device of that type number or one of its other numbers; null when unknown. Case, spaces and hyphens do not count,
    /// twins may be written together ("12AX7/ECC83"), and Japanese numbers without their 2S ("C945").
    /// </summary>
    public Device? Find(string type)
    {
        var plain = TypeNumber.Plain(type);
        var found =
            byName.GetValueOrDefault(plain)
            ?? byName.GetValueOrDefault(TypeNumber.Unabbreviated(plain))
            ?? plain.Split('/').Select(half => byName.GetValueOrDefault(half)).FirstOrDefault(entry => entry is not null);
        return found?.Device;
    }

    /// <summary>The nearest names, best first, one for each device.</summary>
    public IReadOnlyList<string> Nearest(string type, int count = 3)
    {
        var wanted = TypeNumber.Plain(type);
        return
        [
            .. entries
                .Select(entry => NearestName(entry, wanted))
                .OrderBy(n => n.Distance)
                .ThenBy(n => n.Name, StringComparer.Ordinal)
                .Take(count)
                .Select(n => n.Name),
        ];
    }

    /// <summary>This library with more devices, which go before those of the same name already in it.</summary>
    public DeviceLibrary With(IEnumerable<Device> devices) => new([.. devices.Select(d => new LibraryEntry(d)), .. entries]);

    /// <summary>The devices of one data file, checked; docs/add-a-device.md has the format.</summary>
    /// <param name="name">What to call the file when it is wrong.</param>
    /// <exception cref="InvalidDataException">Something is missing or impossible; the message says what, by device.</exception>
    public static IReadOnlyList<Device> Read(string name, string json) =>
        Whole(DeviceFile.Read(name, Encoding.UTF8.GetBytes(json)));

    private static IReadOnlyList<Device> Whole(IReadOnlyList<LibraryEntry> entries)
    {
        var devices = new List<Device>();
        var problems = new List<string>();
        foreach (var entry in entries)
        {
            try
            {
                devices.Add(entry.Device);
            }
            catch (InvalidDataException e)
            {
                problems.Add(e.Message);
            }
        }

        return problems.Count == 0 ? devices : throw new InvalidDataException(string.Join("; ", problems));
    }

    private static (string Name, int Distance) NearestName(LibraryEntry entry, string wanted) =>
        entry
            .AlsoCalled.Prepend(entry.Type)
            .Select(name => (name, TypeNumber.Distance(wanted, TypeNumber.Plain(name))))
            .MinBy(n => n.Item2);

    private static List<LibraryEntry> ReadFiles()
    {
        var assembly = typeof(DeviceLibrary).Assembly;
        var found = new List<LibraryEntry>();
        foreach (
            var name in assembly.GetManifestResourceNames().Where(n => n.EndsWith(".json", StringComparison.Ordinal)).Order()
        )
        {
            using var file = assembly.GetManifestResourceStream(name)!;
            var json = new byte[file.Length];
            file.ReadExactly(json);
            found.AddRange(DeviceFile.Read(name, json));
        }

        return found;
    }
}
