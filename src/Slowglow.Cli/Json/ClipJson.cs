using Slowglow.Circuits;

namespace Slowglow.Cli.Json;

/// <summary>A part that ends the clean range, at a generator level and an output level.</summary>
internal sealed record ClipJson(string Part, string Element, string How, double Input, double Level, string Words)
{
    public static ClipJson From(ClippingCause c) =>
        new(c.Part, c.Element, WordOf(c.Kind), c.GeneratorVolts, c.OutputVolts, c.Words);

    private static string WordOf(ClippingKind kind) =>
        kind switch
        {
            ClippingKind.GridCurrent => "grid current",
            ClippingKind.CutOff => "cut off",
            ClippingKind.Bottomed => "bottomed",
            ClippingKind.PositiveLimit => "positive limit",
            ClippingKind.NegativeLimit => "negative limit",
            ClippingKind.Conducts => "conducts",
            ClippingKind.CurrentLimit => "current limit",
            ClippingKind.Slews => "slews",
            _ => "curvature",
        };
}
