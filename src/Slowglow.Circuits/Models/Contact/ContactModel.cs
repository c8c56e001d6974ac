using Slowglow.Circuits.Building;
using Slowglow.Sheets.Parts.Contact;
using Slowglow.Sheets.Setups;

namespace Slowglow.Circuits.Models.Contact;

/// <summary>A contact, closed in its position. A jack's contact is taken with nothing plugged in unless the setup says.</summary>
internal sealed class ContactModel(ContactPart part, string defaultPosition) : FixedConductanceModel(part)
{
    protected override double Siemens => Closed(defaultPosition);

    private double Closed(string position) => position == part.Position ? CircuitBuilder.WireSiemens : CircuitBuilder.OpenSiemens;

    protected override double SiemensIn(Setup setup) =>
        Closed(setup.Switches.GetValueOrDefault(part.SwitchName, defaultPosition));

    public override IEnumerable<Fault> Faults() => [Whole(FailureMode.Open), Whole(FailureMode.Short)];
}
