using Slowglow.Sheets;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.OpAmp;
using Slowglow.Sheets.Parts.Optocoupler;
using Slowglow.Sheets.Parts.Regulator;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Parts.Unknown;
using Slowglow.Sheets.Parts.Valve;

namespace Slowglow.Bench.Rehearsals;

/// <summary>
/// Gives the real unit other device laws than the program's, one drawing for each type number: perveance, amplification factor and exponent of
/// valves, ideality and resistance of junctions, Early volts, what an op-amp leaves to its rails, copper and leakage of transformers. All of it
/// comes on top of the spread between specimens. Widths are judgement: about what two published fits of one type differ by.
/// </summary>
internal static class LawDoubt
{
    private const double CopperDoubt = 0.1;
    private const double LeakageDoubt = 0.3;
    private const double UnknownDoubt = 0.1;

    /// <summary>Capacitors below this have no random parameter of their own in a circuit, so their tolerance is drawn here.</summary>
    private const double SmallFarads = 0.9e-6;

    /// <summary>Standard deviation of the logarithm, by kind and constant. Constants not named are exact.</summary>
    private static readonly Dictionary<DeviceKind, Dictionary<string, double>> Doubts = new()
    {
        [DeviceKind.Triode] = new()
        {
            ["mu"] = 0.04,
            ["ex"] = 0.03,
            ["kg1"] = 0.12,
            ["kp"] = 0.15,
            ["kvb"] = 0.3,
            ["gg"] = 0.5,
        },
        [DeviceKind.Pentode] = new()
        {
            ["mu"] = 0.04,
            ["ex"] = 0.03,
            ["kg1"] = 0.12,
            ["kg2"] = 0.2,
            ["kp"] = 0.15,
            ["kvb"] = 0.25,
            ["gg"] = 0.5,
        },
        [DeviceKind.RectifierValve] = new() { ["k"] = 0.15 },
        [DeviceKind.Diode] = new()
        {
            ["is"] = 0.4,
            ["n"] = 0.03,
            ["rs"] = 0.3,
        },
        [DeviceKind.Led] = new()
        {
            ["is"] = 0.4,
            ["n"] = 0.03,
            ["rs"] = 0.3,
        },
        [DeviceKind.Zener] = new()
        {
            ["bv"] = 0.01,
            ["rz"] = 0.3,
            ["is"] = 0.4,
        },
        [DeviceKind.Bjt] = new()
        {
            ["is"] = 0.3,
            ["bf"] = 0.2,
            ["br"] = 0.5,
            ["vaf"] = 0.4,
        },
        [DeviceKind.Darlington] = new()
        {
            ["is1"] = 0.3,
            ["is2"] = 0.3,
            ["bf1"] = 0.2,
            ["bf2"] = 0.2,
            ["vaf"] = 0.4,
        },
        [DeviceKind.Jfet] = new()
        {
            ["beta"] = 0.15,
            ["vto"] = 0.08,
            ["lambda"] = 0.4,
        },
        [DeviceKind.Mosfet] = new()
        {
            ["kp"] = 0.2,
            ["vto"] = 0.05,
            ["lambda"] = 0.4,
        },
        [DeviceKind.OpAmp] = new()
        {
            ["gain"] = 0.5,
            ["gbw"] = 0.2,
            ["rout"] = 0.3,
            ["roomHigh"] = 0.2,
            ["roomLow"] = 0.2,
            ["iq"] = 0.2,
            ["ib"] = 0.5,
        },
        [DeviceKind.Regulator] = new()
        {
            ["dropout"] = 0.15,
            ["iq"] = 0.2,
            ["limit"] = 0.2,
            ["rout"] = 0.5,
        },
        [DeviceKind.GasRegulator] = new()
        {
            ["volts"] = 0.01,
            ["ohms"] = 0.3,
            ["strike"] = 0.03,
        },
        [DeviceKind.Optocoupler] = new() { ["ohms"] = 0.2, ["gamma"] = 0.05 },
    };

    /// <summary>The sheet of the real unit.</summary>
    public static Sheet Of(Sheet sheet, Random random)
    {
        var redrawn = new Dictionary<string, Device>();
        Device Other(Device device)
        {
            if (!redrawn.TryGetValue(device.Type, out var other))
            {
                redrawn.Add(device.Type, other = Redraw(device, random));
            }
            return other;
        }
        return sheet with { Parts = [.. sheet.Parts.Select(p => Of(p, Other, random))] };
    }

    private static Part Of(Part part, Func<Device, Device> other, Random random) =>
        part switch
        {
            ValvePart p => p with { Device = other(p.Device) },
            DiodePart p => p with { Device = other(p.Device) },
            TransistorPart p => p with { Device = other(p.Device) },
            OpAmpPart p => p with { Device = other(p.Device) },
            RegulatorPart p => p with { Device = other(p.Device) },
            OptocouplerPart p => p with { Device = other(p.Device) },
            TransformerPart p => Wound(p, random),
            CapacitorPart { Farads: < SmallFarads } p => p with { Farads = p.Farads * random.Factor(p.Tolerance / 2) },
            UnknownPart p => p with { Ohms = p.Ohms * random.Factor(UnknownDoubt) },
            _ => part,
        };

    private static TransformerPart Wound(TransformerPart part, Random random)
    {
        var copper = random.Factor(CopperDoubt);
        return part with
        {
            LeakageHenries = part.LeakageHenries * random.Factor(LeakageDoubt),
            Windings = [.. part.Windings.Select(w => w with { SectionOhms = [.. w.SectionOhms.Select(o => o * copper)] })],
        };
    }

    private static Device Redraw(Device device, Random random)
    {
        if (!Doubts.TryGetValue(device.Kind, out var doubts))
        {
            return device;
        }
        var law = new Dictionary<string, double>(device.Law);
        foreach (var (constant, sigma) in doubts.Where(d => law.ContainsKey(d.Key)))
        {
            law[constant] *= random.Factor(sigma);
        }
        return device with { Law = law };
    }
}
