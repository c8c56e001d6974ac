using Slowglow.Quantities;
using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Parsing;

/// <summary>The mains the unit is strapped for: keys, or just the volts.</summary>
internal static class MainsSection
{
    private static readonly Mains Usual = new(230, 50, 0.06);

    internal static Mains Read(YamlNode? node, SheetContext context)
    {
        switch (node)
        {
            case YamlMap map:
                var keys = new Keys(map, "mains", context.Findings);
                keys.RejectUnknown(["volts", "frequency", "tolerance"]);
                return new Mains(
                    Figure(keys.Scalar("volts"), Unit.Volt, "volts", Usual.Volts, "V", 1, 1000, context),
                    Figure(keys.Scalar("frequency"), Unit.Hertz, "frequency", Usual.Frequency, "Hz", 10, 1000, context),
                    Figure(keys.Scalar("tolerance"), Unit.Percent, "tolerance", Usual.Tolerance, "%", 0, 0.5, context)
                );
            case YamlScalar { Text.Length: > 0 } volts:
                return new Mains(
                    Figure(volts, Unit.Volt, "volts", Usual.Volts, "V", 1, 1000, context),
                    Figure(null, Unit.Hertz, "frequency", Usual.Frequency, "Hz", 0, 0, context),
                    Figure(null, Unit.Percent, "tolerance", Usual.Tolerance, "%", 0, 0, context)
                );
            case YamlList list:
                context.Findings.Error(
                    list.Place,
                    "'mains' holds a list, not keys with values",
                    "write mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }"
                );
                return Read(null, context);
            default:
                context.Assume("mains", "mains", "230 V 50 Hz, 6 %", "the sheet says none");
                return Usual;
        }
    }

    private static double Figure(
        YamlScalar? text,
        Unit unit,
        string key,
        double usual,
        string shown,
        double least,
        double most,
        SheetContext context
    )
    {
        if (text is null)
        {
            context.Assume(
                "mains",
                key,
                Engineering.Format(unit == Unit.Percent ? usual * 100 : usual, shown),
                "the sheet says none; common practice, no source"
            );
            return usual;
        }

        if (QuantityText.TryRead(text.Text, unit, out var figure))
        {
            var value = unit == Unit.Percent && figure.Unit == Unit.None && figure.Value >= 1 ? figure.Value / 100 : figure.Value;
            if (value >= least && value <= most)
            {
                return value;
            }
        }

        context.Findings.Error(text.Place, $"mains: '{text.Text}' cannot be its {key}", UnitNames.Example(unit));
        return usual;
    }
}
