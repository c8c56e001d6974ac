using Slowglow.Circuits.Building;
using Slowglow.Sheets.Parts.Pot;
using Slowglow.Sheets.Setups;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Pot;

/// <summary>Pot or trimmer: two resistances that share the track. Faults: track open at either end, wiper off or dirty, drifted track.</summary>
internal sealed class PotModel(PotPart part) : PartModel(part)
{
    private const double WiperOhms = 1;
    private int upper;
    private int lower;
    private int across;
    private int top;
    private int wiper;
    private int bottom;

    public override void Build(CircuitBuilder builder)
    {
        top = builder.Row(Part.Pins[0].Net);
        wiper = builder.Row(Part.Pins[1].Net);
        bottom = builder.Row(Part.Pins[2].Net);
        var (up, down) = Siemens(part.Rotation);
        upper = builder.Conductance(top, wiper, up);
        lower = builder.Conductance(wiper, bottom, down);
        across = builder.Conductance(top, bottom, CircuitBuilder.OpenSiemens);
        builder.Vary(
            Designator,
            "value",
            part.Tolerance / 2,
            new SlotChange(upper, -part.Tolerance / 2),
            new SlotChange(lower, -part.Tolerance / 2),
            new SlotChange(across, -part.Tolerance / 2)
        );
        if (part.Steps == 0)
        {
            VarySetting(builder, up, down);
        }
    }

    /// <summary>Nobody sets a knob to the degree, and a trimmer's place is a guess.</summary>
    private void VarySetting(CircuitBuilder builder, double up, double down)
    {
        var doubt = part.IsTrimmer ? 0.12 : 0.02;
        var (upMore, downMore) = Siemens(Math.Clamp(part.Rotation + (doubt / 4), 0, 1));
        builder.Vary(
            Designator,
            "setting",
            doubt,
            new SlotChange(upper, 4 * ((upMore / up) - 1)),
            new SlotChange(lower, 4 * ((downMore / down) - 1))
        );
    }

    private (double Upper, double Lower) Siemens(double rotation)
    {
        var share = ShareAt(Math.Clamp(rotation, 0, 1));
        return (1 / ((part.Ohms * (1 - share)) + WiperOhms), 1 / ((part.Ohms * share) + WiperOhms));
    }

    /// <summary>A stepped one stands at the nearest step; decibels count down from the top, and the lowest step is silence.</summary>
    private double ShareAt(double rotation)
    {
        if (part.Steps == 0)
        {
            return ShareBelowWiper(rotation, part.Taper);
        }

        var step = Math.Round(rotation * (part.Steps - 1));
        return double.IsNaN(part.StepDecibels) ? ShareBelowWiper(step / (part.Steps - 1), part.Taper)
            : step == 0 ? 0
            : Math.Pow(10, -part.StepDecibels * (part.Steps - 1 - step) / 20);
    }

    /// <summary>Fraction of the track below the wiper. Log: 15 % at half rotation in two straight pieces (common practice, no source).</summary>
    internal static double ShareBelowWiper(double rotation, Taper taper) =>
        taper switch
        {
            Taper.Log => rotation < 0.5 ? 0.3 * rotation : 0.15 + (1.7 * (rotation - 0.5)),
            Taper.Antilog => 1 - ShareBelowWiper(1 - rotation, Taper.Log),
            _ => rotation,
        };

    public override void Stand(Setup setup, double[] slots)
    {
        if (part.ControlName is { } name && setup.Controls.TryGetValue(name, out var rotation))
        {
            (slots[upper], slots[lower]) = Siemens(rotation);
        }
    }

    public override IEnumerable<Fault> Faults() =>
        [
            new Fault(Designator, "top", FailureMode.Open),
            new Fault(Designator, "bottom", FailureMode.Open),
            new Fault(Designator, "wiper", FailureMode.Open),
            new Fault(Designator, "", FailureMode.Drifted, 2.5),
            .. Severities.Contact.Select(ohms => new Fault(Designator, "wiper", FailureMode.BadContact, ohms)),
        ];

    public override bool Apply(Fault fault, double[] slots)
    {
        switch (fault.Mode, fault.Where)
        {
            case (FailureMode.Open, "top"):
                slots[upper] = CircuitBuilder.OpenSiemens;
                return true;
            case (FailureMode.Open, "bottom"):
                slots[lower] = CircuitBuilder.OpenSiemens;
                return true;
            case (FailureMode.Open, "wiper"):
                // The track stays whole, the wiper is off it.
                slots[across] = 1 / ((1 / slots[upper]) + (1 / slots[lower]));
                slots[upper] = slots[lower] = CircuitBuilder.OpenSiemens;
                return true;
            case (FailureMode.Open, ""):
                slots[upper] = slots[lower] = CircuitBuilder.OpenSiemens;
                return true;
            case (FailureMode.BadContact, "wiper") when fault.Severity > 0:
                AddToWiper(fault.Severity, slots);
                return true;
            case (FailureMode.Drifted, ""):
                slots[upper] /= fault.Severity;
                slots[lower] /= fault.Severity;
                return true;
            default:
                return false;
        }
    }

    /// <summary>The star of two pieces of track and the ohms at the wiper, as the triangle that is laid.</summary>
    private void AddToWiper(double ohms, double[] slots)
    {
        var (up, down, touch) = (slots[upper], slots[lower], 1 / ohms);
        var sum = up + down + touch;
        (slots[upper], slots[lower], slots[across]) = (up * touch / sum, down * touch / sum, up * down / sum);
    }

    public override bool Lift(string pin, double[] slots)
    {
        var where = Part.Pins.FirstOrDefault(p => p.Is(pin))?.Number switch
        {
            "1" => "top",
            "2" => "wiper",
            "3" => "bottom",
            _ => null,
        };
        return where is not null && Apply(new Fault(Designator, where, FailureMode.Open), slots);
    }
}
