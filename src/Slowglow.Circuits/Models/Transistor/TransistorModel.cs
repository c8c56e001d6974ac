using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Transistor;

/// <summary>BJTs, JFETs and MOSFETs.</summary>
internal sealed class TransistorModel(TransistorPart part) : DeviceModel(part, part.Device)
{
    /// <summary>What is left of a bipolar transistor's gain, and of a field-effect one's current (common practice, no source).</summary>
    private const double LowGain = 0.2;
    private const double LowCurrent = 0.4;
    private const double NoEarlyVolts = 1e4;

    private bool IsBipolar => Device.Kind == DeviceKind.Bjt;

    protected override string[] Electrodes => IsBipolar ? ["c", "b", "e"] : ["d", "g", "s"];

    protected override Law Law => IsBipolar ? new BjtLaw() : new FieldEffectLaw();

    protected override double[] Constants =>
        Device.Kind switch
        {
            DeviceKind.Bjt => [Device["polarity"], Device["is"], Device["bf"], Device["br"], Device["vaf"], 1, 1, 1],
            DeviceKind.Jfet => [Device["polarity"], Device["beta"], Device["vto"], Device["lambda"], Device["is"], 0, 1],
            _ => [Device["polarity"], Device["kp"] / 2, Device["vto"], Device["lambda"], 0, Device["diodeIs"], 1],
        };

    protected override SlotChange? ChangeFor(string key, double sigma, int firstSlot) =>
        (IsBipolar, key) switch
        {
            (true, "is") => new SlotChange(firstSlot + (int)BjtLaw.Constant.SaturationAmps, sigma),
            (true, "bf") => new SlotChange(firstSlot + (int)BjtLaw.Constant.ForwardGain, sigma),
            (false, "beta" or "kp") => new SlotChange(firstSlot + (int)FieldEffectLaw.Constant.Beta, sigma),
            (false, "vto") => new SlotChange(firstSlot + (int)FieldEffectLaw.Constant.ThresholdVolts, sigma),
            _ => null,
        };

    public override IEnumerable<Fault> Faults()
    {
        foreach (var section in Sections)
        {
            foreach (var electrode in Electrodes)
            {
                yield return new Fault(Designator, NameOf(section, electrode), FailureMode.Open);
            }

            string[] pairs = IsBipolar ? ["c-e", "b-e", "b-c"] : ["d-s", "g-s", "d-g"];
            foreach (var pair in pairs.Select(p => NameOf(section, p)))
            {
                yield return new Fault(Designator, pair, FailureMode.Short);
                foreach (var leak in Severities.JunctionLeak)
                {
                    yield return new Fault(Designator, pair, FailureMode.Leaky, leak);
                }
            }

            yield return new Fault(Designator, NameOf(section), FailureMode.Drifted, IsBipolar ? LowGain : LowCurrent);
            if (IsBipolar)
            {
                yield return new Fault(Designator, NameOf(section), FailureMode.Backwards);
            }
        }
    }

    public override bool Apply(Fault fault, double[] slots)
    {
        if (fault.Mode is FailureMode.Short || (fault.Mode == FailureMode.Leaky && fault.Severity > 0))
        {
            return ApplyShort(fault, slots);
        }

        var done = false;
        foreach (var (section, detail) in Named(fault.Where))
        {
            done |= fault.Mode switch
            {
                FailureMode.Open => Open(section, detail, slots),
                FailureMode.Dead => Open(section, "", slots),
                FailureMode.Drifted when fault.Severity > 0 => ScaleGain(section, fault.Severity, slots),
                FailureMode.Backwards when IsBipolar => TurnRound(section, slots),
                _ => false,
            };
        }

        return done;
    }

    private bool ScaleGain(SectionInPlace section, double factor, double[] slots)
    {
        slots[section.Slot + (IsBipolar ? (int)BjtLaw.Constant.ForwardGain : (int)FieldEffectLaw.Constant.Beta)] *= factor;
        return true;
    }

    /// <summary>
    /// Collector for emitter: it works with its reverse gain. That its base-emitter junction breaks down at some volts is left out, and
    /// so is the Early effect, which belongs to the other junction.
    /// </summary>
    private static bool TurnRound(SectionInPlace section, double[] slots)
    {
        var (forward, reverse) = (
            section.Slot + (int)BjtLaw.Constant.ForwardGain,
            section.Slot + (int)BjtLaw.Constant.ReverseGain
        );
        (slots[forward], slots[reverse]) = (slots[reverse], slots[forward]);
        slots[section.Slot + (int)BjtLaw.Constant.EarlyVolts] = NoEarlyVolts;
        return true;
    }

    /// <summary>What is left to conduct when an electrode is off: an open collector leaves the base-emitter junction, and so on.</summary>
    private bool Open(SectionInPlace section, string electrode, double[] slots)
    {
        if (!IsBipolar)
        {
            slots[section.Slot + (int)FieldEffectLaw.Constant.Channel] = 0;
            slots[section.Slot + (int)FieldEffectLaw.Constant.GateSaturationAmps] = 0;
            slots[section.Slot + (int)FieldEffectLaw.Constant.BodySaturationAmps] = 0;
            return true;
        }

        slots[section.Slot + (int)BjtLaw.Constant.Transport] = 0;
        if (electrode != "c")
        {
            slots[section.Slot + (int)BjtLaw.Constant.BaseEmitter] = 0;
        }

        if (electrode != "e")
        {
            slots[section.Slot + (int)BjtLaw.Constant.BaseCollector] = 0;
        }

        return true;
    }

    public override bool Lift(string pin, double[] slots)
    {
        var electrode = Part.Pins.FirstOrDefault(p => p.Is(pin))?.Electrode;
        if (electrode is null)
        {
            return false;
        }

        foreach (var section in Sections)
        {
            Open(section, electrode.TrimEnd('1', '2', '3', '4'), slots);
        }

        return true;
    }

    public override PartStress? Stress(StressView view)
    {
        if (Sections.Count == 0)
        {
            return null;
        }

        var section = Sections[0];
        var short1 = section.Leaks[$"{Electrodes[0]}-{Electrodes[2]}"];
        var leak = view.MeanSquareAcross(section.Rows[0], section.Rows[2]) * view.Slots[short1];
        var watts = Math.Abs(view.ElementWatts(section.Element)) + leak;
        var volts = Math.Max(
            view.LargestAcross(section.Rows[0], section.Rows[2]),
            view.LargestAcross(section.Rows[2], section.Rows[0])
        );
        var amps =
            view.ElementRmsAmps(section.Element, 0)
            + (Math.Sqrt(view.MeanSquareAcross(section.Rows[0], section.Rows[2])) * view.Slots[short1]);
        return new PartStress(
            Designator,
            watts,
            watts / Device.Limits.GetValueOrDefault("watts", double.NaN),
            volts,
            volts / Device.Limits.GetValueOrDefault("volts", double.NaN),
            amps,
            amps / Device.Limits.GetValueOrDefault("amps", double.NaN)
        );
    }
}
