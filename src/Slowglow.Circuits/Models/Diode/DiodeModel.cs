using Slowglow.Circuits.Building;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Diode;

internal sealed class DiodeModel(DiodePart part) : TwoPinModel(part)
{
    private const double LeakOhms = 10e3;
    private const double TurnAmps = 0.01;

    /// <summary>Thermal volts of a knee that an exponential can still hold.</summary>
    private const double MostKnees = 400;
    private int slot;
    private int element;

    protected override void Lay(CircuitBuilder builder)
    {
        var device = part.Device;
        slot = builder.Constants(ConstantsOf(device));
        element = builder.Equations.AddElement(new DiodeLaw(), [Plus, Minus], slot);
        foreach (var (key, sigma) in device.Spread)
        {
            DiodeLaw.Constant? moved = key switch
            {
                "is" => DiodeLaw.Constant.SaturationAmps,
                "bv" => DiodeLaw.Constant.BreakdownVolts,
                "n" => DiodeLaw.Constant.Ideality,
                _ => null,
            };
            if (moved is { } constant)
            {
                builder.Vary(Designator, key, sigma, new SlotChange(slot + (int)constant, sigma));
            }
        }
    }

    private static double[] ConstantsOf(Device device)
    {
        var law = device.Law;
        return
        [
            law["is"],
            law["n"],
            Math.Max(law.GetValueOrDefault("rs"), 1e-3),
            law.GetValueOrDefault("bv", 1e4),
            Math.Max(law.GetValueOrDefault("rz", 1), 1e-2),
            law.GetValueOrDefault("iz", 1e-5),
            1,
        ];
    }

    protected override void Open(double[] slots) => slots[slot + (int)DiodeLaw.Constant.Working] = 0;

    public override bool Apply(Fault fault, double[] slots)
    {
        if (fault.Mode == FailureMode.Backwards)
        {
            TurnRound(slots);
            return true;
        }

        if (fault.Mode != FailureMode.Drifted || part.Device.Kind != DeviceKind.Zener)
        {
            return base.Apply(fault, slots);
        }

        slots[slot + (int)DiodeLaw.Constant.BreakdownVolts] *= fault.Severity;
        return true;
    }

    /// <summary>
    /// The same junction seen from its other end: what was its breakdown is the knee now, and its forward drop at ten milliamperes the
    /// breakdown. A saturation current is found that puts the knee at the breakdown volts, spread out where they are high.
    /// </summary>
    private void TurnRound(double[] slots)
    {
        double Old(DiodeLaw.Constant c) => slots[slot + (int)c];
        var (ideality, saturation, ohms) = (
            Old(DiodeLaw.Constant.Ideality),
            Old(DiodeLaw.Constant.SaturationAmps),
            Old(DiodeLaw.Constant.SeriesOhms)
        );
        var (volts, slope, amps) = (
            Old(DiodeLaw.Constant.BreakdownVolts),
            Old(DiodeLaw.Constant.BreakdownOhms),
            Old(DiodeLaw.Constant.BreakdownAmps)
        );
        var knees = Math.Max(1, volts / (MostKnees * DiodeLaw.ThermalVolts));
        slots[slot + (int)DiodeLaw.Constant.Ideality] = knees;
        slots[slot + (int)DiodeLaw.Constant.SaturationAmps] = amps * Math.Exp(-volts / (knees * DiodeLaw.ThermalVolts));
        slots[slot + (int)DiodeLaw.Constant.SeriesOhms] = slope;
        slots[slot + (int)DiodeLaw.Constant.BreakdownVolts] =
            (ideality * DiodeLaw.ThermalVolts * Math.Log(TurnAmps / saturation)) + (TurnAmps * ohms);
        slots[slot + (int)DiodeLaw.Constant.BreakdownOhms] = Math.Max(ohms, 1e-2);
        slots[slot + (int)DiodeLaw.Constant.BreakdownAmps] = TurnAmps;
    }

    public override IEnumerable<Fault> Faults()
    {
        yield return Whole(FailureMode.Open);
        yield return Whole(FailureMode.Short);
        yield return Whole(FailureMode.Backwards);
        if (part.Device.Kind != DeviceKind.Led)
        {
            yield return Whole(FailureMode.Leaky, LeakOhms);
        }

        if (part.Device.Kind == DeviceKind.Zener)
        {
            yield return Whole(FailureMode.Drifted, 0.8);
            yield return Whole(FailureMode.Drifted, 1.25);
        }
    }

    public override PartStress Stress(StressView view)
    {
        var limits = part.Device.Limits;
        var watts = view.ElementWatts(element) + (view.MeanSquareAcross(Plus, Minus) * view.Slots[LeakSlot]);
        var amps = view.ElementRmsAmps(element, 0);
        var volts = part.Device.Kind == DeviceKind.Diode ? view.LargestAcross(Minus, Plus) : double.NaN;
        return new PartStress(
            Designator,
            watts,
            watts / limits.GetValueOrDefault("watts", double.NaN),
            volts,
            volts / limits.GetValueOrDefault("volts", double.NaN),
            amps,
            view.ElementMeanAmps(element, 0) / limits.GetValueOrDefault("amps", double.NaN)
        );
    }
}
