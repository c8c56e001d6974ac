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

    /// <summary>An output transformer's primary reactance equals its load here, hertz (common practice, no source).</summary>
    private const double LowestHertz = 30;
    private const double UsualLoad = 5000;
    private readonly List<SectionOfWinding> sections = [];
    private int magnetisingOhms;
    private int turnsShort;
    private int flux;

    private sealed record SectionOfWinding(
        Winding Winding,
        string FromPin,
        string ToPin,
        int From,
        int To,
        double Turns,
        int Slot,
        double Ohms
    );

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
            return (part.PrimaryImpedance > 0 ? part.PrimaryImpedance : UsualLoad) / (2 * Math.PI * LowestHertz);
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
            var slot = builder.Equations.NewSlot(1 / ohms);
            var emf = builder.Equations.NewSlot(0);
            builder.Equations.AddBranch(BranchKind.Conductance, [from, to, flux], [1, -1, -turns], slot, -1, emf);
            sections.Add(new SectionOfWinding(winding, winding.Pins[s], winding.Pins[s + 1], from, to, turns, slot, ohms));
            copper.Add(new SlotChange(slot, -CopperSpread));
            ratio.Add(new SlotChange(emf, 0, RatioSpread * Math.Sqrt(2) * winding.SectionVolts[s]));
        }

        builder.Vary(Designator, $"copper of {winding.Name}", CopperSpread, [.. copper]);
        if (!part.IsOutput && !winding.IsPrimary)
        {
            builder.Vary(Designator, $"volts of {winding.Name}", RatioSpread, [.. ratio]);
        }
    }

    public override IEnumerable<Fault> Faults()
    {
        foreach (var winding in part.Windings)
        {
            yield return new Fault(Designator, winding.Name, FailureMode.Open);
        }

        yield return Whole(FailureMode.Short);
    }

    public override bool Apply(Fault fault, double[] slots)
    {
        switch (fault.Mode)
        {
            case FailureMode.Open:
                var named = sections.Where(s => fault.Where.Length == 0 || s.Winding.Name == fault.Where).ToList();
                named.ForEach(s => slots[s.Slot] = CircuitBuilder.OpenSiemens);
                return named.Count > 0;
            case FailureMode.Short:
                // Some turns shorted: a load on the core of a third of what the first winding's copper would let through.
                slots[turnsShort] = 0.3 / sections.Where(s => s.Winding == part.Windings[0]).Sum(s => s.Ohms) / 3;
                return true;
            default:
                return false;
        }
    }

    public override bool Lift(string pin, double[] slots)
    {
        var touched = sections.Where(s => s.FromPin == pin || s.ToPin == pin).ToList();
        touched.ForEach(s => slots[s.Slot] = CircuitBuilder.OpenSiemens);
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
            var current = Math.Sqrt(square) * view.Slots[section.Slot];
            watts += square * view.Slots[section.Slot];
            amps = Math.Max(amps, section.Winding.IsPrimary ? current : 0);
            if (section.Winding.RatedAmps > 0)
            {
                worst = Math.Max(worst, current / section.Winding.RatedAmps);
            }
        }

        return new PartStress(Designator, watts, double.NaN, double.NaN, double.NaN, amps, worst > 0 ? worst : double.NaN);
    }
}
