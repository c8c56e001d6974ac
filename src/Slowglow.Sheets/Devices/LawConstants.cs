namespace Slowglow.Sheets.Devices;

/// <summary>Which constants the law of each kind needs; meanings and units are in docs/add-a-device.md.</summary>
public static class LawConstants
{
    private static readonly Dictionary<DeviceKind, string[]> Needed = new()
    {
        [DeviceKind.Triode] = ["mu", "ex", "kg1", "kp", "kvb", "vct", "gg", "cg", "xi"],
        [DeviceKind.Pentode] = ["mu", "ex", "kg1", "kg2", "kp", "kvb", "ks", "gg", "cg", "xi"],
        [DeviceKind.RectifierValve] = ["k"],
        [DeviceKind.Diode] = ["is", "n", "rs", "bv"],
        [DeviceKind.Zener] = ["is", "n", "rs", "bv", "rz", "iz"],
        [DeviceKind.Led] = ["is", "n", "rs", "bv"],
        [DeviceKind.Bjt] = ["polarity", "is", "bf", "br", "vaf"],
        [DeviceKind.Jfet] = ["polarity", "beta", "vto", "lambda", "is"],
        [DeviceKind.Mosfet] = ["polarity", "kp", "vto", "lambda", "diodeIs"],
        [DeviceKind.OpAmp] = ["sections", "gain", "gbw", "slew", "rout", "roomHigh", "roomLow", "iq", "ib", "vos"],
        [DeviceKind.GasRegulator] = ["volts", "strike", "ohms", "least"],
        [DeviceKind.Optocoupler] = ["is", "n", "rs", "bv", "ohms", "amps", "gamma", "dark"],
        [DeviceKind.Darlington] = ["polarity", "is1", "bf1", "is2", "bf2", "br", "vaf", "r1", "r2"],
        [DeviceKind.Regulator] = ["polarity", "volts", "dropout", "limit", "iq", "rout"],
    };

    private static readonly Dictionary<DeviceKind, string[]> Optional = new()
    {
        [DeviceKind.Triode] = ["cga", "cgk", "cak"],
        [DeviceKind.Pentode] = ["cga", "cgk", "cak", "mua", "kns", "kne", "back"],
        [DeviceKind.OpAmp] = ["en", "corner"],
    };

    // Everything else scales something and must be above zero.
    private static readonly HashSet<string> MayBeAnySign = ["polarity", "vct", "vto", "ib"];

    private static readonly HashSet<string> MayBeZero =
    [
        "rs",
        "rz",
        "lambda",
        "ks",
        "rout",
        "roomHigh",
        "roomLow",
        "iq",
        "dropout",
    ];

    /// <summary>Names of the constants that the kind's law needs.</summary>
    public static IReadOnlyList<string> Of(DeviceKind kind) => Needed[kind];

    /// <summary>Names of the constants that the kind's law can take besides.</summary>
    public static IReadOnlyList<string> Besides(DeviceKind kind) => Optional.GetValueOrDefault(kind, []);

    /// <summary>Whether a figure makes sense for that constant.</summary>
    internal static bool IsSensible(string constant, double value) =>
        double.IsFinite(value)
        && constant switch
        {
            "polarity" => Math.Abs(value) == 1,
            "back" => value is > 0 and <= 1,
            "sections" => value is 1 or 2 or 4,
            _ when MayBeAnySign.Contains(constant) => true,
            _ when MayBeZero.Contains(constant) => value >= 0,
            _ => value > 0,
        };
}
