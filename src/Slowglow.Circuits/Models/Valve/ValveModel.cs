using Slowglow.Circuits.Building;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Setups;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Valve;

/// <summary>Triodes, pentodes and rectifier valves, section by section, with the heater where it is drawn.</summary>
internal sealed class ValveModel(ValvePart part) : DeviceModel(part, part.Device)
{
    /// <summary>Ohms of a leak between heater and cathode: common practice, no source.</summary>
    private const double HeaterLeakOhms = 47e3;
    private HeaterInPlace? heater;

    /// <summary>Slot of the siemens between heater and cathode, by section.</summary>
    private readonly Dictionary<int, int> heaterLeaks = [];
    private ValveCapacitances? capacitances;

    /// <summary>Slots of the leaks from the heater's end to the cathodes, with the row of that end.</summary>
    public IEnumerable<(int Slot, int HeaterRow)> HeaterLeaks => heaterLeaks.Values.Select(slot => (slot, heater!.End));

    protected override string[] Electrodes =>
        Device.Kind switch
        {
            DeviceKind.Triode => ["a", "g", "k"],
            DeviceKind.Pentode => ["a", "g", "g2", "k"],
            _ => ["a", "k"],
        };

    protected override Law Law =>
        Device.Kind switch
        {
            DeviceKind.Triode => new SocketedTriodeLaw(),
            DeviceKind.Pentode => new SocketedPentodeLaw(),
            _ => new RectifierLaw(),
        };

    protected override double[] Constants =>
        Device.Kind switch
        {
            DeviceKind.Triode =>
            [
                Device["mu"],
                Device["ex"],
                Device["kg1"],
                Device["kp"],
                Device["kvb"],
                Device["vct"],
                Device["gg"],
                Device["cg"],
                Device["xi"],
                1,
                0,
                1,
            ],
            DeviceKind.Pentode => [.. PentodeConstants.Of(Device), 0, 1, 1],
            _ => [Device["k"], 1],
        };

    private int Emission =>
        Device.Kind switch
        {
            DeviceKind.Triode => (int)TriodeLaw.Constant.Emission,
            DeviceKind.Pentode => (int)PentodeLaw.Constant.Emission,
            _ => (int)RectifierLaw.Constant.Emission,
        };

    private int EmissionOf(SectionInPlace section) => section.Slot + Emission;

    protected override SlotChange? ChangeFor(string key, double sigma, int firstSlot) =>
        key switch
        {
            // All currents of a specimen are high or low together.
            "kg1" or "k" => new SlotChange(firstSlot + Emission, sigma),
            "mu" => new SlotChange(firstSlot, sigma),
            _ => null,
        };

    public override void Build(CircuitBuilder builder)
    {
        base.Build(builder);
        capacitances = new ValveCapacitances(builder, Device, Sections);
        heater = new HeaterInPlace(builder, Part, Device);
        if (heater is { IsDrawn: true, IsFilament: false })
        {
            foreach (var section in Sections)
            {
                heaterLeaks[section.Number] = builder.Conductance(heater.End, section.Rows[^1], CircuitBuilder.OpenSiemens);
            }
        }
    }

    public override bool Follows => heater?.IsDrawn == true && Sections.Count > 0;

    /// <summary>Emission falls with heater volts, which only the solved cycle tells.</summary>
    public override bool Follow(StressView view)
    {
        var factor = heater!.Warm(view);
        foreach (var section in Sections)
        {
            view.Slots[EmissionOf(section)] *= factor;
        }

        return factor != 1;
    }

    public override void Stand(Setup setup, double[] slots)
    {
        var pulled = setup.Pulled.Contains(Designator) || (setup.ValvesOut && Device.Kind != DeviceKind.RectifierValve);
        if (pulled || setup.PowerOff)
        {
            Kill(Sections, slots);
        }

        if (pulled)
        {
            capacitances?.Remove(slots);
            heater?.Open(slots);
        }
        else if (setup.PowerOff)
        {
            heater?.Cool(slots);
        }
    }

    private void Kill(IEnumerable<SectionInPlace> sections, double[] slots)
    {
        foreach (var section in sections)
        {
            slots[EmissionOf(section)] = 0;
        }
    }

    public override IEnumerable<Fault> Faults()
    {
        foreach (var section in Sections)
        {
            yield return new Fault(Designator, NameOf(section), FailureMode.Dead);
            foreach (var left in Severities.Emission)
            {
                yield return new Fault(Designator, NameOf(section), FailureMode.LowEmission, left);
            }

            foreach (var fault in BetweenElectrodes(section))
            {
                yield return fault;
            }
        }

        if (Sections.Count > 0 && (heater?.IsDrawn == true || Sections.Count > 1))
        {
            yield return new Fault(Designator, "heater", FailureMode.Open);
        }
    }

    private IEnumerable<Fault> BetweenElectrodes(SectionInPlace section)
    {
        if (heaterLeaks.ContainsKey(section.Number))
        {
            yield return new Fault(Designator, NameOf(section, "h-k"), FailureMode.Leaky, HeaterLeakOhms);
            yield return new Fault(Designator, NameOf(section, "h-k"), FailureMode.Short);
        }

        if (Device.Kind == DeviceKind.RectifierValve)
        {
            yield return new Fault(Designator, NameOf(section, "a-k"), FailureMode.Short);
            yield break;
        }

        yield return new Fault(Designator, NameOf(section, "g-k"), FailureMode.Short);
        foreach (var gas in Severities.Gas)
        {
            yield return new Fault(Designator, NameOf(section), FailureMode.Gassy, gas);
        }

        foreach (var ohms in Severities.SocketLeak)
        {
            yield return new Fault(Designator, NameOf(section, "a-g"), FailureMode.Leaky, ohms);
        }

        // Without contact at its cathode, at the anode of a triode or at a screen, a section is as good as dead.
        yield return new Fault(Designator, NameOf(section, "g"), FailureMode.Open);
        if (Device.Kind == DeviceKind.Pentode)
        {
            yield return new Fault(Designator, NameOf(section, "a"), FailureMode.Open);
            yield return new Fault(Designator, NameOf(section, "g2-k"), FailureMode.Short);
        }
    }

    public override bool Apply(Fault fault, double[] slots)
    {
        switch (fault.Mode)
        {
            case FailureMode.Gassy when fault.Severity > 0 && Device.Kind != DeviceKind.RectifierValve:
                SetContact(Named(fault.Where).Select(n => n.Section), GasConstant, fault.Severity, slots);
                return true;
            case FailureMode.Open when PinOf(fault.Where) is { } constant:
                SetContact(Named(fault.Where).Select(n => n.Section), constant, 0, slots);
                return true;
            case FailureMode.Dead:
                Kill(Named(fault.Where).Select(n => n.Section), slots);
                return true;
            case FailureMode.LowEmission when fault.Severity > 0:
                foreach (var (section, _) in Named(fault.Where))
                {
                    slots[EmissionOf(section)] *= fault.Severity;
                }

                return true;
            case FailureMode.Open:
                Kill(Sections, slots);
                heater?.Open(slots);
                return true;
            case FailureMode.Short:
            case FailureMode.Leaky when fault.Severity > 0:
                return ApplyToHeater(fault, slots) || ApplyShort(fault, slots);
            default:
                return false;
        }
    }

    private int GasConstant =>
        Device.Kind == DeviceKind.Triode ? (int)SocketedTriodeLaw.Fault.Gas : (int)SocketedPentodeLaw.Fault.Gas;

    /// <summary>The constant of the pin that a fault's place ends with; null where a pin off means no current at all.</summary>
    private int? PinOf(string where) =>
        (Device.Kind, where.Split(' ')[^1]) switch
        {
            (DeviceKind.Triode, "g") => (int)SocketedTriodeLaw.Fault.GridContact,
            (DeviceKind.Pentode, "g") => (int)SocketedPentodeLaw.Fault.GridContact,
            (DeviceKind.Pentode, "a") => (int)SocketedPentodeLaw.Fault.AnodeContact,
            _ => null,
        };

    private static void SetContact(IEnumerable<SectionInPlace> sections, int constant, double value, double[] slots)
    {
        foreach (var section in sections)
        {
            slots[section.Slot + constant] = value;
        }
    }

    private bool ApplyToHeater(Fault fault, double[] slots)
    {
        var done = false;
        foreach (var (section, detail) in Named(fault.Where))
        {
            if (detail is "h-k" or "k-h" && heaterLeaks.TryGetValue(section.Number, out var leak))
            {
                slots[leak] = fault.Mode == FailureMode.Short ? CircuitBuilder.ShortSiemens : 1 / fault.Severity;
                done = true;
            }
        }

        return done;
    }

    public override PartStress? Stress(StressView view)
    {
        double watts = 0,
            worst = double.NaN,
            volts = 0,
            amps = 0;
        var limit = Device.Limits.GetValueOrDefault("anodeWatts", double.NaN);
        foreach (var section in Sections)
        {
            var own = view.ElementWatts(section.Element);
            watts += own;
            worst = double.IsNaN(worst) ? own / limit : Math.Max(worst, own / limit);
            volts = Math.Max(volts, view.LargestAcross(section.Rows[0], section.Rows[^1]));
            amps = Math.Max(amps, view.ElementRmsAmps(section.Element, 0));
        }

        // A rectifier's anode is at its most negative against the cathode: that is its own rating, not checked here. A valve that does not
        // draw stands more than one that does: makers give that apart, or not at all.
        var limitVolts = view.IsOut(Designator) ? "anodeVoltsCold" : "anodeVolts";
        var ratedVolts =
            Device.Kind == DeviceKind.RectifierValve ? double.NaN : Device.Limits.GetValueOrDefault(limitVolts, double.NaN);
        return Sections.Count == 0 ? null : new PartStress(Designator, watts, worst, volts, volts / ratedVolts, amps, double.NaN);
    }
}
