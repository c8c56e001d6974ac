using Slowglow.Circuits.Models.Diode;
using Slowglow.Circuits.Models.OpAmp;
using Slowglow.Circuits.Models.Regulator;
using Slowglow.Circuits.Models.Transistor;
using Slowglow.Circuits.Models.Valve;

namespace Slowglow.Circuits.Solved;

/// <summary>Says for one instant how an element stands outside its working range. Bounds are common practice, no source.</summary>
internal static class WorkingRange
{
    /// <summary>Grid current that a source of 100 k feels by a volt.</summary>
    private const double GridAmps = 10e-6;

    /// <summary>Share of the resting current below which a part counts as cut off.</summary>
    private const double CutOffShare = 0.03;

    /// <summary>Forward volts of a collector junction that say the transistor is saturated.</summary>
    private const double Saturated = 0.35;

    /// <summary>Argument of the op-amp's tanh: 0.96 of the swing it has.</summary>
    private const double NearLimit = 2;

    /// <summary>Share of the most current that a limit lets through.</summary>
    private const double NearMost = 0.9;

    /// <summary>A regulator this far below its resting volts has let go of them.</summary>
    private const double LetGo = 0.95;

    /// <summary>A diode conducts enough to matter.</summary>
    private const double DiodeAmps = 20e-6;

    /// <param name="now">The element at an instant of the cycle.</param>
    /// <param name="rest">The same without signal.</param>
    public static ClippingKind? Of(ElementAtRest now, ElementAtRest rest) =>
        now.Element.Law switch
        {
            TriodeLaw => Valve(now, rest, double.NegativeInfinity),
            PentodeLaw => Valve(now, rest, now.Constant((int)PentodeLaw.Constant.Kvb)),
            BjtLaw => Bipolar(now, rest),
            FieldEffectLaw => FieldEffect(now, rest),
            OpAmpLaw => OpAmp(now),
            RegulatorLaw => Regulator(now, rest),
            DiodeLaw => Math.Abs(now.Amps[0]) > DiodeAmps && Math.Abs(rest.Amps[0]) < DiodeAmps / 4
                ? ClippingKind.Conducts
                : null,
            _ => null,
        };

    private static ClippingKind? Valve(ElementAtRest now, ElementAtRest rest, double knee) =>
        !(rest.Amps[0] > 1e-6) ? null
        : now.Amps[1] > GridAmps ? ClippingKind.GridCurrent
        : now.Volts[0] < knee ? ClippingKind.Bottomed
        : now.Amps[0] < CutOffShare * rest.Amps[0] ? ClippingKind.CutOff
        : null;

    private static ClippingKind? Bipolar(ElementAtRest now, ElementAtRest rest)
    {
        var sign = now.Constant((int)BjtLaw.Constant.Polarity);
        return !(sign * rest.Amps[0] > 1e-6) ? null
            : sign * (now.Volts[1] - now.Volts[0]) > Saturated ? ClippingKind.Bottomed
            : sign * now.Amps[0] < CutOffShare * sign * rest.Amps[0] ? ClippingKind.CutOff
            : null;
    }

    private static ClippingKind? FieldEffect(ElementAtRest now, ElementAtRest rest)
    {
        var sign = now.Constant((int)FieldEffectLaw.Constant.Polarity);
        var over = (sign * now.Volts[1]) - now.Constant((int)FieldEffectLaw.Constant.ThresholdVolts);
        return !(Math.Abs(rest.Amps[0]) > 1e-6) ? null
            : Math.Abs(now.Amps[1]) > GridAmps ? ClippingKind.GridCurrent
            : sign * now.Amps[0] < CutOffShare * sign * rest.Amps[0] ? ClippingKind.CutOff
            : sign * now.Volts[0] < 0.7 * over ? ClippingKind.Bottomed
            : null;
    }

    private static ClippingKind? OpAmp(ElementAtRest now)
    {
        double Constant(OpAmpLaw.Constant c) => now.Constant((int)c);
        var half = 0.5 * (now.Volts[3] - Constant(OpAmpLaw.Constant.RoomHigh) - Constant(OpAmpLaw.Constant.RoomLow));
        var difference = now.Volts[0] - now.Volts[1] + Constant(OpAmpLaw.Constant.OffsetVolts);
        var argument = Constant(OpAmpLaw.Constant.Gain) * difference / Math.Max(half, 1e-3);
        return Math.Abs(now.Amps[2]) > NearMost * Constant(OpAmpLaw.Constant.LimitAmps) ? ClippingKind.CurrentLimit
            : argument > NearLimit ? ClippingKind.PositiveLimit
            : argument < -NearLimit ? ClippingKind.NegativeLimit
            : null;
    }

    /// <summary>Its limit is no cause while it still holds its volts: then it only charges a capacitor.</summary>
    private static ClippingKind? Regulator(ElementAtRest now, ElementAtRest rest) =>
        Math.Abs(now.Amps[1]) > NearMost * now.Constant((int)RegulatorLaw.Constant.LimitAmps)
        && Math.Abs(now.Volts[1]) < LetGo * Math.Abs(rest.Volts[1])
            ? ClippingKind.CurrentLimit
            : null;
}
