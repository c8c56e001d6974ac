using Slowglow.Quantities;

namespace Slowglow.Sheets.Parsing;

/// <summary>Units as messages name them.</summary>
internal static class UnitNames
{
    internal static string Of(Unit unit) =>
        unit switch
        {
            Unit.Ohm => "ohms",
            Unit.Farad => "farads",
            Unit.Henry => "henries",
            Unit.Volt => "volts",
            Unit.Ampere => "amperes",
            Unit.Watt => "watts",
            Unit.VoltAmpere => "volt-amperes",
            Unit.Hertz => "hertz",
            Unit.Percent => "percent",
            Unit.Minute => "minutes",
            _ => "numbers",
        };

    internal static string Example(Unit unit) =>
        unit switch
        {
            Unit.Ohm => "write 4k7, 470 or 1M",
            Unit.Farad => "write 22u, 2n2 or 100p",
            Unit.Henry => "write 8H or 100m",
            Unit.Volt => "write 230 V",
            Unit.Ampere => "write 25 mA",
            Unit.Watt => "write 0.5 W",
            Unit.VoltAmpere => "write 20 VA",
            Unit.Hertz => "write 50 Hz",
            Unit.Percent => "write 6 %",
            Unit.Minute => "write 5 min",
            _ => "write a plain number",
        };
}
