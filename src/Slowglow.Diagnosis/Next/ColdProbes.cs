using Slowglow.Sheets;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.OpAmp;
using Slowglow.Sheets.Parts.Optocoupler;
using Slowglow.Sheets.Parts.Pot;
using Slowglow.Sheets.Parts.Regulator;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Next;

/// <summary>Readings with the power off: ohms across parts and windings, diode test across junctions.</summary>
internal sealed class ColdProbes(Sheet sheet)
{
    public IEnumerable<Probe> All() => sheet.Parts.SelectMany(Of);

    private static IEnumerable<Probe> Of(Part part) =>
        part switch
        {
            DiodePart =>
            [
                Across(part, ProbeKind.Diode),
                Ends(part, part.Pins[1], part.Pins[0], ProbeKind.Diode),
                Ends(part, part.Pins[1], part.Pins[0], ProbeKind.Ohm),
            ],
            TransistorPart t => OfTransistor(t),
            TransformerPart t => OfTransformer(t),
            PotPart => OfPot(part),
            RegulatorPart => OfRegulator(part),
            ValvePart => OfValve(part),
            OptocouplerPart => Some(Named(part, "a", "k", ProbeKind.Diode), Named(part, "ra", "rb", ProbeKind.Ohm)),
            OpAmpPart => [],
            { Pins.Count: 2 } => [Across(part, ProbeKind.Ohm)],
            _ => [],
        };

    private static IEnumerable<Probe> OfTransistor(TransistorPart part)
    {
        if (part.Device.Kind is not (DeviceKind.Bjt or DeviceKind.Darlington))
        {
            return Some(
                Named(part, "d", "s", ProbeKind.Ohm),
                Named(part, "g", "s", ProbeKind.Ohm),
                Named(part, "g", "d", ProbeKind.Ohm)
            );
        }
        var npn = part.Device.Law.GetValueOrDefault("polarity", 1) > 0;
        return npn
            ? Some(
                Named(part, "b", "e", ProbeKind.Diode),
                Named(part, "b", "c", ProbeKind.Diode),
                Named(part, "c", "e", ProbeKind.Ohm)
            )
            : Some(
                Named(part, "e", "b", ProbeKind.Diode),
                Named(part, "c", "b", ProbeKind.Diode),
                Named(part, "e", "c", ProbeKind.Ohm)
            );
    }

    private static IEnumerable<Probe> OfTransformer(TransformerPart part) =>
        part
            .Windings.SelectMany(w => w.Pins.Zip(w.Pins.Skip(1)))
            .SelectMany(ends => Some(Named(part, ends.First, ends.Second, ProbeKind.Ohm)));

    private static IEnumerable<Probe> OfPot(Part part) =>
        [
            Ends(part, part.Pins[0], part.Pins[2], ProbeKind.Ohm),
            Ends(part, part.Pins[1], part.Pins[2], ProbeKind.Ohm),
            Ends(part, part.Pins[0], part.Pins[1], ProbeKind.Ohm),
        ];

    private static IEnumerable<Probe> OfRegulator(Part part) =>
        Some(
            Named(part, "in", "out", ProbeKind.Ohm),
            Named(part, "out", "gnd", ProbeKind.Ohm) ?? Named(part, "out", "adj", ProbeKind.Ohm)
        );

    private static IEnumerable<Probe> OfValve(Part part) =>
        Some(
            Named(part, "g", "k", ProbeKind.Ohm),
            Named(part, "g2", "k2", ProbeKind.Ohm),
            Named(part, "g_2", "k2", ProbeKind.Ohm),
            Named(part, "h", "k", ProbeKind.Ohm)
        );

    private static IEnumerable<Probe> Some(params Probe?[] probes) => probes.OfType<Probe>();

    private static Probe Across(Part part, ProbeKind kind) => new(part.Designator, part.Pins[0].Net, part.Pins[1].Net, kind);

    private static Probe Ends(Part part, Pin red, Pin black, ProbeKind kind) =>
        new($"{part.Designator}.{red.Number} - {part.Designator}.{black.Number}", red.Net, black.Net, kind);

    private static Probe? Named(Part part, string red, string black, ProbeKind kind)
    {
        var (from, to) = (part.NetOf(red), part.NetOf(black));
        return from is null || to is null
            ? null
            : new Probe($"{part.Designator}.{red} - {part.Designator}.{black}", from, to, kind);
    }
}
