namespace Slowglow.Sheets.Readings;

/// <summary>What kind of meter took a reading.</summary>
/// <param name="Name">As written after "meter".</param>
/// <param name="InputOhms">Input resistance on volts ranges.</param>
/// <param name="DcError">Relative, one standard deviation.</param>
/// <param name="AcError">Relative, one standard deviation.</param>
/// <param name="OhmError">Relative, one standard deviation.</param>
/// <param name="Counts">Full-scale counts: 2000, 6000, 20000; fixes the resolution.</param>
public sealed record MeterClass(string Name, double InputOhms, double DcError, double AcError, double OhmError, int Counts)
{
    /// <summary>An ordinary good handheld: 10 Mohm, 6000 counts.</summary>
    public static MeterClass Handheld { get; } = new("handheld", 10e6, 0.004, 0.01, 0.006, 6000);

    /// <summary>Every class that may stand after "meter"; figures are common practice, no source.</summary>
    public static IReadOnlyList<MeterClass> All { get; } =
    [
        Handheld,
        new("bench", 10e6, 0.0003, 0.002, 0.0005, 60000),
        new("pocket", 10e6, 0.008, 0.02, 0.01, 2000),
        new("analogue", 2e6, 0.02, 0.03, 0.04, 100),
    ];
}
