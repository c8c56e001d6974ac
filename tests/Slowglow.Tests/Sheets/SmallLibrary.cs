using Slowglow.Sheets.Devices;

namespace Slowglow.Tests.Sheets;

/// <summary>A handful of devices with plain constants, so that reading sheets is tested apart from the shipped data.</summary>
internal static class SmallLibrary
{
    internal static DeviceLibrary Library { get; } =
        new([
            Device("12AX7", DeviceKind.Triode, "1 1 a, 2 1 g, 3 1 k, 4 0 h, 5 0 h, 6 2 a, 7 2 g, 8 2 k, 9 0 ht", "ECC83"),
            Device("12AU7", DeviceKind.Triode, "1 1 a, 2 1 g, 3 1 k, 4 0 h, 5 0 h, 6 2 a, 7 2 g, 8 2 k, 9 0 ht", "ECC82"),
            Device("EL84", DeviceKind.Pentode, "1 0 nc, 2 1 g, 3 1 k, 4 0 h, 5 0 h, 6 0 nc, 7 1 a, 8 0 nc, 9 1 g2"),
            Device("EZ81", DeviceKind.RectifierValve, "1 1 a, 3 0 k, 4 0 h, 5 0 h, 7 2 a"),
            Device("0D3", DeviceKind.GasRegulator, "1 1 a, 2 1 k, 5 0 nc"),
            Device("VTL5C3", DeviceKind.Optocoupler, "1 1 a, 2 1 k, 3 1 ra, 4 1 rb"),
            Device("TIP122", DeviceKind.Darlington, "1 1 b, 2 1 c, 3 1 e"),
            Device("1N4007", DeviceKind.Diode, "1 1 a, 2 1 k"),
            Device("1N4148", DeviceKind.Diode, "1 1 a, 2 1 k"),
            Device("BZX55C12", DeviceKind.Zener, "1 1 a, 2 1 k"),
            Device("2N3904", DeviceKind.Bjt, "1 1 e, 2 1 b, 3 1 c"),
            Device("2N5457", DeviceKind.Jfet, "1 1 d, 2 1 s, 3 1 g"),
            Device("IRF540", DeviceKind.Mosfet, "1 1 g, 2 1 d, 3 1 s"),
            Device("TL072", DeviceKind.OpAmp, "1 1 out, 2 1 in-, 3 1 in+, 4 0 v-, 5 2 in+, 6 2 in-, 7 2 out, 8 0 v+"),
            Device("L7815", DeviceKind.Regulator, "1 1 in, 2 1 gnd, 3 1 out"),
            Device("LM317", DeviceKind.Regulator, "1 1 adj, 2 1 out, 3 1 in"),
        ]);

    private static Device Device(string type, DeviceKind kind, string pinout, params string[] also) =>
        new()
        {
            Type = type,
            AlsoCalled = also,
            Kind = kind,
            Pinout =
            [
                .. pinout.Split(", ").Select(p => p.Split(' ')).Select(p => new DevicePin(p[0], int.Parse(p[1], null), p[2])),
            ],
            Law = kind == DeviceKind.Diode ? DiodeLaw() : new Dictionary<string, double> { ["mu"] = 100 },
            Spread = kind == DeviceKind.Diode ? [] : new Dictionary<string, double> { ["mu"] = 0.05 },
            Limits = new Dictionary<string, double> { ["watts"] = 0.5, ["anodeWatts"] = 1 },
            Source = "made up for tests",
        };

    private static Dictionary<string, double> DiodeLaw() =>
        new()
        {
            ["is"] = 1e-9,
            ["n"] = 1.8,
            ["rs"] = 0.05,
            ["bv"] = 1000,
        };
}
