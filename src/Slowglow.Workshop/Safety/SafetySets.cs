using static Slowglow.Workshop.Safety.SafetyTests;

namespace Slowglow.Workshop.Safety;

/// <summary>
/// Test sets by region. Every figure stands in tests/reference/safety_limits.csv with its source and is compared with it by a test. They were not
/// read in the standards themselves: whoever tests checks them against the edition in force where the unit goes home.
/// </summary>
public static class SafetySets
{
    public const string Caution =
        "Limits come from secondary sources and memory, as marked. The figures are the technician's; local codes and licensed practice come first.";

    private const string Vde = "DIN VDE 0701-0702:2008";
    private const string En = "DIN EN 50678 (after repair) and EN 50699 (recurrent)";
    private const string Iet = "IET Code of Practice";
    private const string Iet4 = "IET Code of Practice, 4th ed., 2012";
    private const string Iet5 = "IET Code of Practice, 5th ed., 2020";
    private const string AsNzs = "AS/NZS 3760";
    private const string Ul = "UL 101 / ANSI C101 style";
    private const string Makers = "US set makers' chassis leakage check";

    /// <summary>All limits, by set and class.</summary>
    public static IReadOnlyList<SafetyLimit> All { get; } =
    [
        new("EN 50678, after repair", "I", Earth, "up to 5 m, section up to 1.5 mm2", false, 0.3, "ohm", En, "secondary"),
        new("EN 50678, after repair", "I", Insulation, "general", true, 1, "megohm", Vde, "two copies"),
        new("EN 50678, after repair", "I", EarthCurrent, "general", false, 3.5, "mA", Vde, "two copies"),
        new(
            "EN 50678, after repair",
            "I",
            Touch,
            "parts not joined to the protective conductor",
            false,
            0.5,
            "mA",
            Vde,
            "secondary"
        ),
        new("EN 50678, after repair", "II", Insulation, "", true, 2, "megohm", Vde, "two copies"),
        new("EN 50678, after repair", "II", Touch, "", false, 0.5, "mA", Vde, "secondary"),
        new("IET, 5th edition, in service", "I", Earth, EarthPlusCord, false, 0.1, "ohm", Iet, "secondary"),
        new("IET, 5th edition, in service", "I", Insulation, Five00, true, 1, "megohm", Iet, "two copies"),
        new("IET, 5th edition, in service", "I", Leakage, "", false, 5, "mA", Iet5, "secondary"),
        new("IET, 5th edition, in service", "II", Insulation, Five00, true, 2, "megohm", Iet, "two copies"),
        new("IET, 5th edition, in service", "II", Leakage, "", false, 5, "mA", Iet5, "secondary"),
        new("IET, 4th edition, in service", "I", Earth, EarthPlusCord, false, 0.1, "ohm", Iet, "secondary"),
        new("IET, 4th edition, in service", "I", Insulation, Five00, true, 1, "megohm", Iet, "two copies"),
        new("IET, 4th edition, in service", "I", Leakage, "hand-held and portable", false, 0.75, "mA", Iet4, "secondary"),
        new("IET, 4th edition, in service", "II", Insulation, Five00, true, 2, "megohm", Iet, "two copies"),
        new("IET, 4th edition, in service", "II", Leakage, "", false, 0.25, "mA", Iet4, "secondary"),
        new("AS/NZS 3760", "I", Earth, "", false, 1, "ohm", AsNzs, "memory"),
        new("AS/NZS 3760", "I", Insulation, "500 V DC, 250 V with surge protection", true, 1, "megohm", AsNzs, "memory"),
        new("AS/NZS 3760", "I", Leakage, "not settled by our sources", false, null, "mA", "AS/NZS 3760:2010", "secondary"),
        new("AS/NZS 3760", "II", Insulation, "500 V DC, 250 V with surge protection", true, 1, "megohm", AsNzs, "memory"),
        new("AS/NZS 3760", "II", Leakage, "not settled by our sources", false, null, "mA", "AS/NZS 3760:2010", "secondary"),
        new("US, leakage from the chassis", "I", Leakage, "three-wire portable", false, 0.5, "MIU", Ul, "secondary"),
        new("US, leakage from the chassis", "II", Leakage, "two-wire", false, 0.5, "MIU", Ul, "secondary"),
        new("US, leakage from the chassis", "II", Chassis, "0.75 V across 1500 ohm", false, 0.5, "mA", Makers, "memory"),
    ];

    private const string EarthPlusCord =
        "plus the resistance of the protective conductor in the cord (this addition from memory)";
    private const string Five00 = "500 V DC, 250 V if surge protected";

    public static IReadOnlyList<string> Names { get; } = [.. All.Select(l => l.Set).Distinct()];

    /// <summary>Limits of a set for a class of equipment; empty when there is no such set.</summary>
    public static IReadOnlyList<SafetyLimit> Of(string set, string equipmentClass) =>
        [.. All.Where(l => l.Set == set && l.Class == equipmentClass)];

    /// <summary>
    /// The limit for a lead of that length, or with a protective conductor of that resistance: DIN VDE 0701-0702:2008 gives 0.1 ohm for each
    /// further 7.5 m beyond 5 m, 1 ohm in all; the IET Code adds the conductor in the cord.
    /// </summary>
    public static double? With(SafetyLimit limit, double cordMetres, double cordOhms) =>
        limit switch
        {
            { Test: Earth, Standard: En } => Math.Min(1.0, 0.3 + 0.1 * Math.Ceiling(Math.Max(0, cordMetres - 5) / 7.5)),
            { Test: Earth, Standard: Iet, Value: { } value } => value + Math.Max(0, cordOhms),
            _ => limit.Value,
        };
}
