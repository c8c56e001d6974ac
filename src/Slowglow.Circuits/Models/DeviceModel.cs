using Slowglow.Circuits.Building;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models;

/// <summary>A part with a type number: sections, each a nonlinear element with a leak between every two of its pins.</summary>
internal abstract class DeviceModel(Part part, Device device) : PartModel(part)
{
    protected Device Device { get; } = device;
    protected List<SectionInPlace> Sections { get; } = [];

    /// <summary>Numbers of the sections laid, in the order of their elements.</summary>
    public IEnumerable<int> SectionNumbers => Sections.Select(s => s.Number);

    public override void Build(CircuitBuilder builder)
    {
        var numbers = Device.Pinout.Select(p => p.Section).Where(s => s > 0).Distinct().Order().ToList();
        foreach (var section in numbers.Count == 0 ? [0] : numbers)
        {
            var nets = Electrodes.ToDictionary(e => e, e => NetOf(section, e));
            if (nets.Values.Any(n => n is not null && builder.IsShared(n)) && nets.Values.All(n => n is not null))
            {
                Sections.Add(Lay(builder, section, Wired(builder, section, nets!)));
            }
        }
    }

    /// <summary>Electrodes in the order of the law's ports, the reference last.</summary>
    protected abstract string[] Electrodes { get; }

    protected abstract Law Law { get; }

    protected abstract double[] Constants { get; }

    /// <summary>Which constant (index in the law) a key of the device's spread moves, and by how much for one sigma.</summary>
    protected abstract SlotChange? ChangeFor(string key, double sigma, int firstSlot);

    /// <summary>The nets that a section works between, by electrode: those of the sheet, unless it leaves some out that cannot be left open.</summary>
    protected virtual Dictionary<string, string> Wired(CircuitBuilder builder, int section, Dictionary<string, string> nets) =>
        nets;

    private string? NetOf(int section, string electrode)
    {
        var pin =
            Device.Pinout.FirstOrDefault(p => p.Section == section && p.Electrode == electrode)
            ?? Device.Pinout.FirstOrDefault(p => p.Section == 0 && p.Electrode == electrode);
        return pin is null ? null : Part.NetOf(pin.Number);
    }

    private SectionInPlace Lay(CircuitBuilder builder, int section, Dictionary<string, string> nets)
    {
        int[] rows = [.. Electrodes.Select(e => builder.Row(nets[e]))];
        var slot = builder.Constants(Constants);
        var element = builder.Equations.AddElement(Law, rows, slot);
        var leaks = new Dictionary<string, int>();
        for (var a = 0; a < rows.Length; a++)
        {
            for (var b = a + 1; b < rows.Length; b++)
            {
                var leak = builder.Conductance(rows[a], rows[b], CircuitBuilder.OpenSiemens);
                leaks[$"{Electrodes[a]}-{Electrodes[b]}"] = leak;
                leaks[$"{Electrodes[b]}-{Electrodes[a]}"] = leak;
            }
        }

        foreach (var (key, sigma) in Device.Spread)
        {
            if (ChangeFor(key, sigma, slot) is { } change)
            {
                var name = section > 1 ? $"{key} of section {section}" : key;
                builder.Vary(Designator, name, sigma, change);
            }
        }

        return new SectionInPlace(section, element, slot, rows, leaks);
    }

    /// <summary>"" for a single device, the number for one of several.</summary>
    protected string NameOf(SectionInPlace section) =>
        Sections.Count > 1 || section.Number > 1
            ? section.Number.ToString(System.Globalization.CultureInfo.InvariantCulture)
            : "";

    /// <summary>"g-k" of a single device, "2 g-k" of one of several.</summary>
    protected string NameOf(SectionInPlace section, string detail) => $"{NameOf(section)} {detail}".Trim();

    /// <summary>Sections that a fault's Where names, with what is left of it: "2 g-k" is section 2, "g-k".</summary>
    protected IEnumerable<(SectionInPlace Section, string Detail)> Named(string where)
    {
        var words = where.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var number = words.Length > 0 && int.TryParse(words[0], out var n) ? n : 0;
        var detail = string.Join(' ', number > 0 ? words.Skip(1) : words);
        return Sections.Where(s => number == 0 || s.Number == number || Sections.Count == 1).Select(s => (s, detail));
    }

    protected bool ApplyShort(Fault fault, double[] slots)
    {
        var done = false;
        foreach (var (section, detail) in Named(fault.Where))
        {
            if (section.Leaks.TryGetValue(detail, out var leak))
            {
                slots[leak] = fault.Mode == FailureMode.Short ? CircuitBuilder.ShortSiemens : 1 / fault.Severity;
                done = true;
            }
        }

        return done;
    }
}
