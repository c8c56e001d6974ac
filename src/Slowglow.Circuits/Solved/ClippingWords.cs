using Slowglow.Circuits.Models.OpAmp;
using Slowglow.Circuits.Models.Regulator;
using Slowglow.Circuits.Models.Transistor;
using Slowglow.Quantities;

namespace Slowglow.Circuits.Solved;

/// <summary>Says in the trade's words how a part leaves its range.</summary>
internal static class ClippingWords
{
    public static string Say(string name, ClippingKind kind, ElementAtRest rest) =>
        kind switch
        {
            ClippingKind.GridCurrent when rest.Element.Law is FieldEffectLaw => $"{name}: its gate conducts",
            ClippingKind.GridCurrent => $"{name} draws grid current",
            ClippingKind.CutOff => $"{name} cuts off",
            ClippingKind.Bottomed when rest.Element.Law is BjtLaw => $"{name} saturates: its supply is used up",
            ClippingKind.Bottomed when rest.Element.Law is FieldEffectLaw => $"{name} is fully on: its supply is used up",
            ClippingKind.Bottomed => $"{name}: its anode comes down to the knee, its supply is used up",
            ClippingKind.PositiveLimit =>
                $"{name} reaches its positive limit on a supply of {Engineering.Format(rest.Volts[3], "V", 2)} from rail to rail",
            ClippingKind.NegativeLimit =>
                $"{name} reaches its negative limit on a supply of {Engineering.Format(rest.Volts[3], "V", 2)} from rail to rail",
            ClippingKind.CurrentLimit => $"{name} gives all the current it can, {Engineering.Format(Most(rest), "A", 2)}",
            ClippingKind.Conducts => $"{name} conducts",
            _ => $"nothing clips: the curvature of {name} makes the distortion",
        };

    private static double Most(ElementAtRest rest) =>
        rest.Element.Law is RegulatorLaw
            ? rest.Constant((int)RegulatorLaw.Constant.LimitAmps)
            : rest.Constant((int)OpAmpLaw.Constant.LimitAmps);
}
