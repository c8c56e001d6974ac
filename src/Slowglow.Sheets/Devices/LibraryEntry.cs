namespace Slowglow.Sheets.Devices;

/// <summary>A device of the library by its names, read when it is asked for; the same one every time, from any thread.</summary>
internal sealed class LibraryEntry(string type, IReadOnlyList<string> alsoCalled, Func<Device> read)
{
    private readonly Lazy<Device> device = new(read);

    internal LibraryEntry(Device device)
        : this(device.Type, device.AlsoCalled, () => device) { }

    internal string Type => type;

    internal IReadOnlyList<string> AlsoCalled => alsoCalled;

    /// <exception cref="InvalidDataException">Something is missing or impossible; the message says what.</exception>
    internal Device Device => device.Value;
}
