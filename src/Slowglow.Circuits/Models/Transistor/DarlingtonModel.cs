using Slowglow.Circuits.Building;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Transistor;

/// <summary>Two bipolar transistors in one case, the first driving the base of the second, each with its resistor from base to emitter.</summary>
internal sealed class DarlingtonModel(TransistorPart part) : PartModel(part)
{
    private static readonly string[] Pairs = ["c-e", "b-e", "b-c"];
    private readonly Dictionary<string, int> leaks = [];
    private int driver;
    private int output;
    private int driverSlot;
    private int outputSlot;
    private int collector;
    private int emitter;
    private int driverResistor;
    private int outputResistor;

    public override void Build(CircuitBuilder builder)
    {
        var device = part.Device;
        collector = builder.Row(part.NetOf("c")!);
        emitter = builder.Row(part.NetOf("e")!);
        var (@base, inner) = (builder.Row(part.NetOf("b")!), builder.Equations.NewUnknown());
        (driver, driverSlot) = Lay(builder, device, "1", [collector, @base, inner]);
        (output, outputSlot) = Lay(builder, device, "2", [collector, inner, emitter]);
        driverResistor = builder.Conductance(@base, inner, 1 / device["r1"]);
        outputResistor = builder.Conductance(inner, emitter, 1 / device["r2"]);
        leaks["c-e"] = builder.Conductance(collector, emitter, CircuitBuilder.OpenSiemens);
        leaks["b-e"] = builder.Conductance(@base, emitter, CircuitBuilder.OpenSiemens);
        leaks["b-c"] = builder.Conductance(@base, collector, CircuitBuilder.OpenSiemens);
        foreach (var (key, sigma) in device.Spread)
        {
            if (key is "bf1" or "bf2")
            {
                var first = key == "bf1" ? driverSlot : outputSlot;
                builder.Vary(Designator, key, sigma, new SlotChange(first + (int)BjtLaw.Constant.ForwardGain, sigma));
            }
        }
    }

    private static (int Element, int Slot) Lay(CircuitBuilder builder, Device device, string which, int[] rows)
    {
        double[] constants =
        [
            device["polarity"],
            device["is" + which],
            device["bf" + which],
            device["br"],
            device["vaf"],
            1,
            1,
            1,
        ];
        var slot = builder.Constants(constants);
        return (builder.Equations.AddElement(new BjtLaw(), rows, slot), slot);
    }

    public override IEnumerable<Fault> Faults() =>
        [
            .. new[] { "c", "b", "e" }.Select(e => new Fault(Designator, e, FailureMode.Open)),
            .. Pairs.Select(p => new Fault(Designator, p, FailureMode.Short)),
            .. Pairs.SelectMany(p => Severities.JunctionLeak.Select(ohms => new Fault(Designator, p, FailureMode.Leaky, ohms))),
            Whole(FailureMode.Drifted, 0.2),
        ];

    public override bool Apply(Fault fault, double[] slots)
    {
        switch (fault.Mode)
        {
            case FailureMode.Short or FailureMode.Leaky when leaks.TryGetValue(fault.Where, out var leak):
                slots[leak] = fault.Mode == FailureMode.Short ? CircuitBuilder.ShortSiemens : 1 / fault.Severity;
                return true;
            case FailureMode.Open or FailureMode.Dead:
                Open(fault.Where, slots);
                return true;
            case FailureMode.Drifted when fault.Severity > 0:
                slots[driverSlot + (int)BjtLaw.Constant.ForwardGain] *= fault.Severity;
                return true;
            default:
                return false;
        }
    }

    /// <summary>What is left when an electrode is off: an open collector leaves two junctions in series from base to emitter, and so on.</summary>
    private void Open(string electrode, double[] slots)
    {
        slots[driverSlot + (int)BjtLaw.Constant.Transport] = slots[outputSlot + (int)BjtLaw.Constant.Transport] = 0;
        if (electrode != "c")
        {
            slots[outputSlot + (int)BjtLaw.Constant.BaseEmitter] = 0;
            slots[outputResistor] = CircuitBuilder.OpenSiemens;
        }

        if (electrode != "e")
        {
            slots[driverSlot + (int)BjtLaw.Constant.BaseCollector] = 0;
            slots[outputSlot + (int)BjtLaw.Constant.BaseCollector] = 0;
        }

        if (electrode is "b" or "")
        {
            slots[driverSlot + (int)BjtLaw.Constant.BaseEmitter] = 0;
            slots[driverResistor] = CircuitBuilder.OpenSiemens;
        }
    }

    public override bool Lift(string pin, double[] slots)
    {
        var electrode = Part.Pins.FirstOrDefault(p => p.Is(pin))?.Electrode;
        if (electrode is null)
        {
            return false;
        }

        Open(electrode, slots);
        return true;
    }

    public override PartStress Stress(StressView view)
    {
        var limits = part.Device.Limits;
        var leak = view.Slots[leaks["c-e"]];
        var watts = view.ElementWatts(driver) + view.ElementWatts(output) + (view.MeanSquareAcross(collector, emitter) * leak);
        var volts = Math.Max(view.LargestAcross(collector, emitter), view.LargestAcross(emitter, collector));
        var amps = view.ElementRmsAmps(output, 0) + (Math.Sqrt(view.MeanSquareAcross(collector, emitter)) * leak);
        return new PartStress(
            Designator,
            watts,
            watts / limits.GetValueOrDefault("watts", double.NaN),
            volts,
            volts / limits.GetValueOrDefault("volts", double.NaN),
            amps,
            amps / limits.GetValueOrDefault("amps", double.NaN)
        );
    }
}
