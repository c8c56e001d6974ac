using Slowglow.Circuits.Building;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Setups;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Transformer;

/// <summary>
/// Windings on one core. The flux, in volts of the whole first winding, is an unknown of its own; every section is its copper in series
/// with its turns' share of the flux, and the turns balance in the flux's own equation together with the magnetising path.
/// </summary>
internal sealed class TransformerModel(TransformerPart part) : PartModel(part)
{
    /// <summary>Ratio spread of windings, one sigma (common practice, no source).</summary>
    private const double RatioSpread = 0.015;
    private const double CopperSpread = 0.05;

    /// <summary>Magnetising current of a mains transformer over its rated primary current (common practice, no source).</summary>
    private const double MagnetisingShare = 0.05;

    /// <summary>Share of a winding's turns that a short between turns takes in (common practice, no source).</summary>
    private const double ShortedShare = 0.1;
    private const string PinWord = "pin ";
    private readonly List<SectionOfWinding> sections = [];
    private int magnetisingOhms;
    private int turnsShort;
    private int flux;
    private WindingInsulation? insulation;

    private sealed record SectionOfWinding(
        Winding Winding,
        string FromPin,
        string ToPin,
        int From,
        int To,
        double Turns,
        int Slot,
        double Ohms,
        bool IsFlow
    )
    {
        /// <summary>A winding with leakage inductance has its ohms in the slot, any other its siemens.</summary>
        public void Open(double[] slots) => slots[Slot] = IsFlow ? 1 / CircuitBuilder.OpenSiemens : CircuitBuilder.OpenSiemens;

        public double Siemens(double[] slots) => IsFlow ? 1 / slots[Slot] : slots[Slot];
    }

    public override void Build(CircuitBuilder builder)
    {
        flux = builder.Equations.NewUnknown();
        var reference = part.Windings[0].SectionVolts.Sum();
        foreach (var winding in part.Windings)
        {
            LayWinding(builder, winding, reference);
        }

        magnetisingOhms = builder.Equations.NewSlot(0.01);
        var henries = builder.Equations.NewSlot(MagnetisingHenries(builder));
        builder.Equations.AddBranch(BranchKind.Flow, flux, -1, magnetisingOhms, henries);
        turnsShort = builder.Conductance(flux, -1, CircuitBuilder.OpenSiemens);
        insulation = new WindingInsulation(builder, part);
        if (!part.IsOutput)
        {
            builder.OpenAtCrest.Add(magnetisingOhms);
        }
    }

    private double MagnetisingHenries(CircuitBuilder builder)
    {
        var volts = part.Windings[0].SectionVolts.Sum();
        if (part.IsOutput)
        {
            var share = volts / part.Windings.Where(w => w.IsPrimary).Sum(w => w.SectionVolts.Sum());
            return part.PrimaryHenries * share * share;
        }

        var rating = double.IsNaN(part.Rating) ? 20 : part.Rating;
        return volts / (MagnetisingShare * rating / volts) / (2 * Math.PI * builder.Sheet.Mains.Frequency);
    }

    private void LayWinding(CircuitBuilder builder, Winding winding, double reference)
    {
        var copper = new List<SlotChange>();
        var ratio = new List<SlotChange>();
        for (var s = 0; s < winding.SectionVolts.Count; s++)
        {
            var from = builder.Row(Part.NetOf(winding.Pins[s])!);
            var to = builder.Row(Part.NetOf(winding.Pins[s + 1])!);
            var turns = winding.SectionVolts[s] / reference;
            var ohms = Math.Max(winding.SectionOhms[s], 1e-4);
            var leaks = part.IsOutput && !winding.IsPrimary;
            var slot = builder.Equations.NewSlot(leaks ? ohms : 1 / ohms);
            var other = builder.Equations.NewSlot(leaks ? LeakageHenries(winding, s) : 0);
            double[] weights = [1, -1, -turns];
            if (leaks)
            {
                builder.Equations.AddBranch(BranchKind.Flow, [from, to, flux], weights, slot, other);
            }
            else
            {
                builder.Equations.AddBranch(BranchKind.Conductance, [from, to, flux], weights, slot, -1, other);
                ratio.Add(new SlotChange(other, 0, RatioSpread * Math.Sqrt(2) * winding.SectionVolts[s]));
            }

            sections.Add(new SectionOfWinding(winding, winding.Pins[s], winding.Pins[s + 1], from, to, turns, slot, ohms, leaks));
            copper.Add(new SlotChange(slot, leaks ? CopperSpread : -CopperSpread));
        }

        builder.Vary(Designator, $"copper of {winding.Name}", CopperSpread, [.. copper]);
        if (!part.IsOutput && !winding.IsPrimary)
        {
            builder.VaryTurns(new TurnsSpread(Designator, winding.Name, RatioSpread, flux, reference), [.. ratio]);
        }
    }

    /// <summary>
    /// Leakage seen from the whole primary, brought to a section of another winding by turns: sections in series add up to the winding's.
    /// </summary>
    private double LeakageHenries(Winding winding, int section)
    {
        var primary = part.Windings.Where(w => w.IsPrimary).Sum(w => w.SectionVolts.Sum());
        return part.LeakageHenries * winding.SectionVolts[section] * winding.SectionVolts.Sum() / (primary * primary);
    }

    /// <summary>
    /// Any winding open, or one end of a tapped winding ("pin 3"); turns shorted in the first ("") or in another by its name; and what
    /// breaks through the insulation.
    /// </summary>
    public override IEnumerable<Fault> Faults() =>
        [
            .. part.Windings.Select(w => new Fault(Designator, w.Name, FailureMode.Open)),
            .. part
                .Windings.Where(w => w.Pins.Count > 2)
                .SelectMany(Ends)
                .Select(e => new Fault(Designator, e, FailureMode.Open)),
            Whole(FailureMode.Short),
            .. part.Windings.Skip(1).Select(w => new Fault(Designator, w.Name, FailureMode.Short)),
            .. insulation!.FaultsOf(Designator),
        ];

    private static IEnumerable<string> Ends(Winding winding) => [PinWord + winding.Pins[0], PinWord + winding.Pins[^1]];

    public override bool Apply(Fault fault, double[] slots)
    {
        switch (fault.Mode)
        {
            case FailureMode.Open when fault.Where.StartsWith(PinWord, StringComparison.Ordinal):
                return Lift(fault.Where[PinWord.Length..], slots);
            case FailureMode.Open:
                var named = sections.Where(s => fault.Where.Length == 0 || s.Winding.Name == fault.Where).ToList();
                named.ForEach(s => s.Open(slots));
                return named.Count > 0;
            case FailureMode.Short or FailureMode.Leaky when insulation!.Apply(fault, slots):
                return true;
            case FailureMode.Short:
                return ShortTurns(fault.Where, slots);
            default:
                return false;
        }
    }

    /// <summary>
    /// A share k of a winding's turns shorted within itself stands as k turns2 / ohms across the core: k of its volts over k of its
    /// copper, brought to the core by k of its turns. What the winding itself loses in turns is left out.
    /// </summary>
    private bool ShortTurns(string where, double[] slots)
    {
        var winding = where.Length == 0 ? part.Windings[0] : part.Windings.FirstOrDefault(w => w.Name == where);
        var own = sections.Where(s => s.Winding == winding).ToList();
        if (own.Count == 0)
        {
            return false;
        }

        var turns = own.Sum(s => s.Turns);
        slots[turnsShort] = ShortedShare * turns * turns / own.Sum(s => s.Ohms);
        return true;
    }

    public override bool Lift(string pin, double[] slots)
    {
        var touched = sections.Where(s => s.FromPin == pin || s.ToPin == pin).ToList();
        touched.ForEach(s => s.Open(slots));
        return touched.Count > 0;
    }

    public override PartStress Stress(StressView view)
    {
        double watts = 0,
            worst = 0,
            amps = 0;
        foreach (var section in sections)
        {
            var square = view.MeanSquare([section.From, section.To, flux], [1, -1, -section.Turns]);
            var siemens = section.Siemens(view.Slots);
            var current = Math.Sqrt(square) * siemens;
            watts += square * siemens;
            amps = Math.Max(amps, section.Winding.IsPrimary ? current : 0);
            if (section.Winding.RatedAmps > 0)
            {
                worst = Math.Max(worst, current / section.Winding.RatedAmps);
            }
        }

        return new PartStress(Designator, watts, double.NaN, double.NaN, double.NaN, amps, worst > 0 ? worst : double.NaN);
    }
}
