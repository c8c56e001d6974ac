using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
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
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Parts.Wire;

namespace Slowglow.Diagnosis.Priors;

/// <summary>Which family a part fails with.</summary>
internal static class PartKinds
{
    /// <summary>A transistor rated above this many watts is a power transistor.</summary>
    private const double SmallTransistorWatts = 1.5;

    /// <summary>A diode rated above this many amperes is a rectifier.</summary>
    private const double SignalDiodeAmps = 0.5;

    public static PartKind Of(Part part) =>
        part switch
        {
            ResistorPart r => OfResistor(r.Style),
            PotPart => PartKind.Pot,
            CapacitorPart c => OfCapacitor(c.Style),
            DiodePart d => OfDiode(d.Device),
            TransistorPart t => OfTransistor(t.Device),
            OpAmpPart => PartKind.OpAmp,
            RegulatorPart => PartKind.Regulator,
            ValvePart { Device.Kind: DeviceKind.GasRegulator } => PartKind.GasRegulator,
            OptocouplerPart => PartKind.Optocoupler,
            RelayPart => PartKind.Relay,
            ValvePart v => v.Device.Kind == DeviceKind.RectifierValve ? PartKind.RectifierValve : PartKind.Valve,
            TransformerPart t => t.IsOutput ? PartKind.OutputTransformer : PartKind.MainsTransformer,
            InductorPart => PartKind.Inductor,
            ContactPart => PartKind.Contact,
            WirePart => PartKind.Wire,
            FusePart => PartKind.Fuse,
            LampPart => PartKind.Lamp,
            LoudspeakerPart => PartKind.Loudspeaker,
            _ => PartKind.Unexplained,
        };

    private static PartKind OfResistor(ResistorStyle style) =>
        style switch
        {
            ResistorStyle.Carbon => PartKind.CarbonResistor,
            ResistorStyle.Wirewound => PartKind.WirewoundResistor,
            _ => PartKind.FilmResistor,
        };

    private static PartKind OfCapacitor(CapacitorStyle style) =>
        style switch
        {
            CapacitorStyle.Electrolytic or CapacitorStyle.Bipolar => PartKind.ElectrolyticCapacitor,
            CapacitorStyle.Tantalum => PartKind.TantalumCapacitor,
            CapacitorStyle.Paper => PartKind.PaperCapacitor,
            CapacitorStyle.Ceramic => PartKind.CeramicCapacitor,
            CapacitorStyle.Mica => PartKind.MicaCapacitor,
            _ => PartKind.FilmCapacitor,
        };

    private static PartKind OfDiode(Device device) =>
        device.Kind switch
        {
            DeviceKind.Zener => PartKind.Zener,
            DeviceKind.Led => PartKind.Led,
            _ => device.Limits.GetValueOrDefault("amps", 1) <= SignalDiodeAmps ? PartKind.SignalDiode : PartKind.Diode,
        };

    private static PartKind OfTransistor(Device device) =>
        device.Kind switch
        {
            DeviceKind.Jfet => PartKind.Jfet,
            DeviceKind.Mosfet => PartKind.Mosfet,
            _ => device.Limits.GetValueOrDefault("watts", 0.5) > SmallTransistorWatts
                ? PartKind.PowerTransistor
                : PartKind.SmallTransistor,
        };
}
