using Slowglow.Quantities;
using Slowglow.Sheets.Devices;

namespace Slowglow.Sheets.Parsing;

/// <summary>How much specimens of a device differ: from its data, or from the sheet.</summary>
internal static class DeviceSpread
{
    /// <summary>The device with the spread that the entry gives, if it gives one.</summary>
    internal static Device Override(Device device, PartFacts facts)
    {
        var given = facts.TakeKeyed(Unit.Percent, "spread");
        return given.IsGiven && given.Value is >= 0 and < 1
            ? device with
            {
                Spread = device.Spread.Keys.ToDictionary(k => k, _ => given.Value),
            }
            : device;
    }

    private static string Word(string constant) =>
        constant switch
        {
            "mu" => "amplification factor",
            "kg1" or "is" or "k" => "current",
            "kg2" => "screen current",
            "bf" => "current gain",
            "bv" or "volts" => "volts",
            "vto" => "threshold",
            "beta" or "kp" => "transconductance",
            "vos" => "offset",
            "gain" => "gain",
            _ => constant,
        };

    internal static void List(string designator, Device device, SheetContext context)
    {
        if (device.Spread.Count == 0)
        {
            return;
        }

        var figures = device
            .Spread.OrderBy(s => s.Key, StringComparer.Ordinal)
            .Select(s => $"{Word(s.Key)} {Engineering.Format(s.Value * 100, "%", 2)}");
        context.Assume(
            designator,
            "spread between specimens",
            string.Join(", ", figures),
            $"one standard deviation, device data of {device.Type}"
        );
    }
}
