using System.Text.Json;

namespace Slowglow.Sheets.Devices;

/// <summary>
/// A data file: devices of one kind, with what they have in common said once. Names are read at once and a device when it is asked for, because a sheet
/// needs a dozen of many hundred.
/// </summary>
internal sealed class DeviceFile
{
    private static readonly JsonDocumentOptions Options = new()
    {
        CommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true,
    };

    private readonly string name;
    private readonly DeviceKind kind;

    /// <summary>Pinouts that several devices share, by a name of the file's own.</summary>
    private readonly IReadOnlyDictionary<string, string> pinouts = new Dictionary<string, string>();

    /// <summary>Holds for each device of the file unless the device says otherwise.</summary>
    private readonly DeviceEntry common = new();

    private DeviceFile(string name, JsonElement written)
    {
        this.name = name;
        var known = false;
        foreach (var property in Written.Properties(written))
        {
            switch (property.Name)
            {
                case "kind":
                    kind = Kind(Written.Text(property.Value));
                    known = true;
                    break;
                case "pinouts":
                    pinouts = Written.Map(property.Value, Written.Text);
                    break;
                case "common":
                    common = DeviceEntry.Read(property.Value);
                    break;
                case "devices":
                    break;
                default:
                    throw new JsonException($"a file of devices has no '{property.Name}'");
            }
        }

        if (!known)
        {
            throw new JsonException("the file does not say of which kind its devices are");
        }
    }

    /// <summary>The file's devices by name.</summary>
    /// <param name="name">What to call the file when it is wrong.</param>
    /// <exception cref="InvalidDataException">The text is not such a file. A device that is wrong says so when it is asked for.</exception>
    internal static IReadOnlyList<LibraryEntry> Read(string name, ReadOnlyMemory<byte> json)
    {
        try
        {
            var root = JsonDocument.Parse(json, Options).RootElement;
            var file = new DeviceFile(name, root);
            var found = new List<LibraryEntry>();
            foreach (
                var written in Written.Items(Written.Find(root, "devices") ?? throw new JsonException("the file has no devices"))
            )
            {
                file.Add(written, found);
            }

            return found;
        }
        catch (JsonException e)
        {
            throw new InvalidDataException($"{name}: {e.Message}", e);
        }
    }

    private void Add(JsonElement written, List<LibraryEntry> found)
    {
        var type = Written.Find(written, "type") is { } named ? Written.Text(named) : "";
        var others = Written.Find(written, "alsoCalled") is { } also ? Written.Texts(also) : [];
        var device = new LibraryEntry(type, others, () => Checked(() => Device(DeviceEntry.Read(written))));
        found.Add(device);
        if (Written.Find(written, "near") is not { } near)
        {
            return;
        }

        foreach (var relative in Written.Properties(near))
        {
            var (other, limits) = (relative.Name, relative.Value);
            found.Add(
                new LibraryEntry(
                    other,
                    [],
                    () => Checked(() => device.Device.Like(other) with { Limits = Written.Figures(limits) })
                )
            );
        }
    }

    private Device Checked(Func<Device> read)
    {
        try
        {
            var device = read();
            var problems = DeviceCheck.Problems(device);
            return problems.Count == 0
                ? device
                : throw new InvalidDataException($"{name}: {string.Join("; ", problems.Select(p => $"{device.Type}: {p}"))}");
        }
        catch (Exception e) when (e is JsonException or FormatException)
        {
            throw new InvalidDataException($"{name}: {e.Message}", e);
        }
    }

    private Device Device(DeviceEntry entry)
    {
        var pinout = entry.Pinout ?? common.Pinout ?? "";
        return new Device
        {
            Type = entry.Type,
            AlsoCalled = entry.AlsoCalled,
            Kind = kind,
            Pinout = Pinout.Read(pinouts.GetValueOrDefault(pinout, pinout)),
            Law = Merge(common.Law, entry.Law),
            Spread = Merge(common.Spread, entry.Spread),
            Limits = Merge(common.Limits, entry.Limits),
            Source = string.Join(" ", new[] { entry.Source, common.Source }.Where(s => s.Length > 0)),
        };
    }

    private static DeviceKind Kind(string text) =>
        char.IsAsciiLetter(text.FirstOrDefault()) && Enum.TryParse(typeof(DeviceKind), text, ignoreCase: true, out var kind)
            ? (DeviceKind)kind
            : throw new JsonException($"'{text}' is not a kind of device");

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
