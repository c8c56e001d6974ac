using Slowglow.Circuits.Models.Capacitor;
using Slowglow.Circuits.Models.Contact;
using Slowglow.Circuits.Models.Diode;
using Slowglow.Circuits.Models.Fuse;
using Slowglow.Circuits.Models.GasRegulator;
using Slowglow.Circuits.Models.Inductor;
using Slowglow.Circuits.Models.Lamp;
using Slowglow.Circuits.Models.Loudspeaker;
using Slowglow.Circuits.Models.OpAmp;
using Slowglow.Circuits.Models.Optocoupler;
using Slowglow.Circuits.Models.Pot;
using Slowglow.Circuits.Models.Regulator;
using Slowglow.Circuits.Models.Relay;
using Slowglow.Circuits.Models.Resistor;
using Slowglow.Circuits.Models.Transformer;
using Slowglow.Circuits.Models.Transistor;
using Slowglow.Circuits.Models.Unknown;
using Slowglow.Circuits.Models.Valve;
using Slowglow.Circuits.Models.Wire;
using Slowglow.Sheets;
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
using Slowglow.Sheets.Parts.Unknown;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Parts.Wire;

namespace Slowglow.Circuits.Models;

/// <summary>The one list of which model belongs to which part kind.</summary>
internal static class ModelOf
{
    /// <summary>The model of a part; null for kinds that are electrically nothing (connectors).</summary>
    public static PartModel? Part(Part part, Sheet sheet) =>
        part switch
        {
            ResistorPart p => new ResistorModel(p),
            CapacitorPart p => new CapacitorModel(p),
            InductorPart p => new InductorModel(p),
            PotPart p => new PotModel(p),
            DiodePart p => new DiodeModel(p),
            ValvePart { Device.Kind: DeviceKind.GasRegulator } p => new GasRegulatorModel(p),
            ValvePart p => new ValveModel(p),
            TransistorPart { Device.Kind: DeviceKind.Darlington } p => new DarlingtonModel(p),
            TransistorPart p => new TransistorModel(p),
            OpAmpPart p => new OpAmpModel(p),
            RegulatorPart p => new RegulatorModel(p),
            OptocouplerPart p => new OptocouplerModel(p),
            RelayPart p => new RelayModel(p),
            TransformerPart p => new TransformerModel(p),
            FusePart p => new FuseModel(p),
            LampPart p => new LampModel(p),
            WirePart p => new WireModel(p),
            UnknownPart p => new UnknownModel(p),
            LoudspeakerPart p => new LoudspeakerModel(p),
            ContactPart p => new ContactModel(
                p,
                DefaultPosition(p, sheet),
                sheet.Parts.OfType<RelayPart>().Any(r => r.Designator == p.SwitchName)
            ),
            _ => null,
        };

    private static string DefaultPosition(ContactPart part, Sheet sheet) =>
        sheet.Switches.FirstOrDefault(s => s.Name == part.SwitchName)?.Positions[0] ?? "out";
}
