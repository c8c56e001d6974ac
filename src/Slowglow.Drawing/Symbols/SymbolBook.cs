using Slowglow.Sheets;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Connector;
using Slowglow.Sheets.Parts.Contact;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.Fuse;
using Slowglow.Sheets.Parts.Inductor;
using Slowglow.Sheets.Parts.Lamp;
using Slowglow.Sheets.Parts.Loudspeaker;
using Slowglow.Sheets.Parts.OpAmp;
using Slowglow.Sheets.Parts.Optocoupler;
using Slowglow.Sheets.Parts.Pot;
using Slowglow.Sheets.Parts.Regulator;
using Slowglow.Sheets.Parts.Relay;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Parts.Unknown;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Parts.Wire;

namespace Slowglow.Drawing.Symbols;

/// <summary>Finds the symbols of a sheet's parts. Every connected pin is on exactly one of them.</summary>
internal sealed class SymbolBook
{
    private readonly Sheet sheet;
    private readonly bool zigzag;
    private readonly Dictionary<string, int> ends;

    public SymbolBook(Sheet sheet, bool zigzag)
    {
        this.sheet = sheet;
        this.zigzag = zigzag;
        ends = sheet.Parts.SelectMany(p => p.Pins).GroupBy(p => p.Net).ToDictionary(g => g.Key, g => g.Count());
    }

    /// <summary>In the sheet's order, the mains inlet first.</summary>
    public IReadOnlyList<Symbol> All()
    {
        List<Symbol> symbols = [];
        string[] inlet = [.. new[] { NetTable.Live, NetTable.Neutral, NetTable.Earth }.Where(ends.ContainsKey)];
        if (inlet.Length > 0)
        {
            symbols.Add(new InletSymbol(inlet, sheet.Mains));
        }

        foreach (var part in sheet.Parts)
        {
            List<Symbol> own = [.. SymbolsOf(part)];
            symbols.AddRange(own);
            var drawn = own.SelectMany(s => s.Pins).Select(p => p.Name).ToHashSet();
            Pin[] left = [.. part.Pins.Where(p => !drawn.Contains($"{part.Designator}.{p.Number}") && ends[p.Net] > 1)];
            if (left.Length > 0)
            {
                symbols.Add(new BoxSymbol(part, left, "pins"));
            }
        }

        return symbols;
    }

    private IEnumerable<Symbol> SymbolsOf(Part part) =>
        part switch
        {
            ResistorPart p => [new ResistorSymbol(p, zigzag)],
            CapacitorPart p => [new CapacitorSymbol(p)],
            InductorPart p => [new InductorSymbol(p)],
            DiodePart p => [new DiodeSymbol(p)],
            FusePart p => [new FuseSymbol(p)],
            LampPart p => [new LampSymbol(p)],
            ContactPart p => [new ContactSymbol(p)],
            WirePart p => [new WireSymbol(p)],
            LoudspeakerPart p => [new LoudspeakerSymbol(p)],
            RelayPart p => [new RelaySymbol(p)],
            UnknownPart p => [new UnknownSymbol(p)],
            PotPart p => [new PotSymbol(p, zigzag)],
            ConnectorPart p => p.Pins.Count > 0 ? [new ConnectorSymbol(p)] : [],
            TransformerPart p => [new TransformerSymbol(p)],
            TransistorPart p => [OneTransistor(p)],
            OpAmpPart p => OpAmps(p),
            ValvePart p => Valves(p),
            RegulatorPart p => [new RegulatorSymbol(Sections.Single(p), p)],
            OptocouplerPart p => [new OptocouplerSymbol(Sections.Single(p), p)],
            _ => [],
        };

    private static Symbol OneTransistor(TransistorPart part)
    {
        var section = Sections.Single(part);
        return part.Device.Kind is DeviceKind.Bjt or DeviceKind.Darlington
            ? new TransistorSymbol(section, part)
            : new FieldEffectSymbol(section, part);
    }

    private IEnumerable<Symbol> OpAmps(OpAmpPart part)
    {
        foreach (var section in Sections.Of(part, part.Device).Where(s => !s.IsUnused(ends)))
        {
            yield return new OpAmpSymbol(section, part);
        }

        var (plus, minus) = (
            part.Pins.FirstOrDefault(p => p.Electrode == "v+"),
            part.Pins.FirstOrDefault(p => p.Electrode == "v-")
        );
        if (plus is not null && minus is not null)
        {
            yield return BoxSymbol.Supply(part, plus, minus);
        }
    }

    private IEnumerable<Symbol> Valves(ValvePart part)
    {
        var sections = Sections.Of(part, part.Device).Where(s => !s.IsUnused(ends)).ToArray();
        if (part.Device.Kind == DeviceKind.RectifierValve)
        {
            yield return Rectifier(part);
        }
        else
        {
            foreach (var section in sections)
            {
                yield return part.Device.Kind switch
                {
                    DeviceKind.Pentode => new PentodeSymbol(section, part),
                    DeviceKind.GasRegulator => new GasRegulatorSymbol(section, part),
                    _ => new TriodeSymbol(section, part),
                };
            }
        }

        Pin[] heater = [.. part.Pins.Where(p => p.Electrode is "h" && ends[p.Net] > 1)];
        if (heater.Length >= 2)
        {
            yield return Heater(part, heater);
        }
    }

    private static RectifierValveSymbol Rectifier(ValvePart part)
    {
        Pin[] anodes = [.. part.Pins.Where(p => Sections.Bare(p.Electrode) == "a")];
        var rest = part.Pins.Where(p => Sections.Bare(p.Electrode) is "k" or "f").DistinctBy(p => Sections.Bare(p.Electrode));
        return new(new Section(part, 0, rest.ToDictionary(p => Sections.Bare(p.Electrode))), part, anodes);
    }

    private HeaterSymbol Heater(ValvePart part, Pin[] heater)
    {
        var tap = part.Pins.FirstOrDefault(p => p.Electrode == "ht" && ends[p.Net] > 1);
        // Two halves in parallel are drawn as one heater with one of the shared pins as its tap.
        return tap is null && heater.Length > 2 ? new(part, [heater[0], heater[^1]], heater[1]) : new(part, heater, tap);
    }
}
