using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts.Diode;

namespace Slowglow.Drawing.Symbols;

/// <summary>IEC 60617 05-03-01, breakdown diode 05-03-06, LED 05-03-02. First end is the anode.</summary>
internal sealed class DiodeSymbol(DiodePart part) : TwoEnded(part, Value(part), Shape(part.Device.Kind))
{
    private static string Value(DiodePart part) =>
        part.Device.Kind == DeviceKind.Diode
            ? part.Device.Type
            : part.Description.Replace("zener ", "", StringComparison.Ordinal);

    private static IEnumerable<Stroke> Shape(DeviceKind kind) =>
        [
            Line.Of((0, -Reach), (0, Reach)),
            Line.Shape((-0.8, -0.65), (0.8, -0.65), (0, 0.65)),
            kind == DeviceKind.Zener ? Line.Of((-0.8, 0.25), (-0.8, 0.65), (0.8, 0.65)) : Line.Of((-0.8, 0.65), (0.8, 0.65)),
            .. kind == DeviceKind.Led
                ? Line.Arrow((-0.7, 0.1), (-1.5, 0.6), 0.35).Concat(Line.Arrow((-0.5, 0.5), (-1.3, 1), 0.35))
                : [],
        ];
}
