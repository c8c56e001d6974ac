using Slowglow.Quantities;
using Slowglow.Sheets;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.Regulator;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Wire;

namespace Slowglow.Bench.Rehearsals;

/// <summary>What somebody may have fitted or bridged in a unit, which no list of failures holds.</summary>
internal sealed class WrongParts(Sheet sheet, Random random)
{
    /// <summary>A misread colour band or code: the wrong decade, or a value picked from the next drawer. Common practice, no source.</summary>
    private static readonly double[] Slips = [0.01, 0.1, 0.1, 0.22, 0.47, 2.2, 4.7, 10, 10, 100];

    /// <summary>Null when the draw makes no sense on this sheet.</summary>
    public HiddenFault? Draw(HiddenKind kind) => kind == HiddenKind.Bridged ? Bridge() : Wrong(random.Pick(sheet.Parts));

    private HiddenFault? Wrong(Part part)
    {
        var slip = random.Pick(Slips);
        var volts = random.Pick([0.5, 0.66, 1.5, 2]);
        return part switch
        {
            ResistorPart r => Of(r with { Ohms = r.Ohms * slip }, Engineering.Format(r.Ohms * slip, "ohm", 2)),
            CapacitorPart c => Of(c with { Farads = c.Farads * slip }, Engineering.Format(c.Farads * slip, "F", 2)),
            DiodePart { Device.Kind: DeviceKind.Zener } z => Of(
                z with
                {
                    Device = Scaled(z.Device, "bv", volts),
                },
                Engineering.Format(z.Device["bv"] * volts, "V", 2)
            ),
            RegulatorPart u when u.Device["volts"] > 3 => Of(
                u with
                {
                    Device = Scaled(u.Device, "volts", volts),
                },
                Engineering.Format(u.Device["volts"] * volts, "V", 2)
            ),
            _ => null,
        };
    }

    private static HiddenFault Of(Part fitted, string value) =>
        new(HiddenKind.WrongValue, [], fitted, [fitted.Designator], $"{fitted.Designator} fitted with {value}");

    private static Device Scaled(Device device, string constant, double factor) =>
        device with
        {
            Law = new Dictionary<string, double>(device.Law) { [constant] = device[constant] * factor },
        };

    /// <summary>A blob of solder between two nets that have no part in common.</summary>
    private HiddenFault? Bridge()
    {
        string[] nets =
        [
            .. sheet.Nets.Names.Where(n => n != NetTable.Ground && !n.StartsWith("MAINS.", StringComparison.Ordinal)),
        ];
        var (a, b) = (random.Pick(nets), random.Pick(nets));
        var joined = sheet.Parts.Any(p => p.Pins.Any(x => x.Net == a) && p.Pins.Any(x => x.Net == b));
        return a == b || joined
            ? null
            : new(
                HiddenKind.Bridged,
                [],
                new WirePart
                {
                    Designator = "BRIDGE",
                    Pins = [new("1", "", a), new("2", "", b)],
                    Description = "solder",
                },
                [],
                $"{a} and {b} bridged"
            );
    }
}
