using Slowglow.Circuits.Building;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Parts.Contact;
using Slowglow.Sheets.Setups;

namespace Slowglow.Circuits.Models.Contact;

/// <summary>
/// A contact, closed in its position. A jack's contact is taken with nothing plugged in unless the setup says; a relay's follows the volts
/// on its coil, unless the setup says.
/// </summary>
internal sealed class ContactModel(ContactPart part, string defaultPosition, bool ofRelay) : FixedConductanceModel(part)
{
    private const string PulledIn = "on";
    private IReadOnlyDictionary<string, RelayCoil> coils = new Dictionary<string, RelayCoil>();

    /// <summary>1 while the relay has pulled in; in a slot that belongs to no branch, as the next.</summary>
    private int pulled;

    /// <summary>1 for a contact that moves no more: burnt, lifted, or told by the setup.</summary>
    private int stuck;

    /// <summary>Ohms of dirt on a relay's contact, which it keeps whenever it closes.</summary>
    private int dirt;

    protected override double Siemens => Closed(defaultPosition);

    private double Closed(string position) => position == part.Position ? CircuitBuilder.WireSiemens : CircuitBuilder.OpenSiemens;

    protected override double SiemensIn(Setup setup) =>
        Closed(setup.Switches.GetValueOrDefault(part.SwitchName, defaultPosition));

    protected override void Lay(CircuitBuilder builder)
    {
        base.Lay(builder);
        if (ofRelay)
        {
            coils = builder.Coils;
            pulled = builder.Equations.NewSlot(0);
            stuck = builder.Equations.NewSlot(0);
            dirt = builder.Equations.NewSlot(0);
        }
    }

    public override void Stand(Setup setup, double[] slots)
    {
        base.Stand(setup, slots);
        if (ofRelay && setup.Switches.ContainsKey(part.SwitchName))
        {
            slots[stuck] = 1;
        }
    }

    protected override void Open(double[] slots)
    {
        base.Open(slots);
        if (ofRelay)
        {
            slots[stuck] = 1;
        }
    }

    /// <summary>Dirt counts where the contact is closed: an open one is open anyway.</summary>
    public override bool Apply(Fault fault, double[] slots)
    {
        if (ofRelay && fault.Mode == FailureMode.BadContact)
        {
            slots[dirt] = fault.Severity;
        }

        return base.Apply(fault, slots);
    }

    public override bool Follows => ofRelay;

    /// <summary>Switch, jack or relay that moves it.</summary>
    public string Of => part.SwitchName;

    /// <summary>What a relay's contact last followed; null for one that moves no more.</summary>
    public bool? HasPulledIn(double[] slots) => slots[stuck] > 0 ? null : slots[pulled] > 0;

    public override bool Follow(StressView view)
    {
        if (view.Slots[stuck] > 0)
        {
            return false;
        }

        var coil = coils[part.SwitchName];
        var was = view.Slots[pulled] > 0;
        var volts = Math.Sqrt(view.MeanSquareAcross(coil.Plus, coil.Minus)) * view.Slots[coil.Slot] / coil.Siemens;
        var now = volts >= (was ? coil.ReleaseVolts : coil.PullInVolts);
        view.Slots[pulled] = now ? 1 : 0;
        view.Slots[Slot] = Closed(now ? PulledIn : defaultPosition);
        AddOhms(view.Slots[dirt], view.Slots);
        return now != was;
    }

    /// <summary>A short is a contact that has welded.</summary>
    public override IEnumerable<Fault> Faults() =>
        [Whole(FailureMode.Open), Whole(FailureMode.Short), .. BadContacts(Severities.Contact)];
}
