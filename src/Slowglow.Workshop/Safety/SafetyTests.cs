namespace Slowglow.Workshop.Safety;

/// <summary>Names of the tests, as printed on the record.</summary>
public static class SafetyTests
{
    public const string Earth = "earth bond";
    public const string Insulation = "insulation resistance";
    public const string EarthCurrent = "protective conductor current";
    public const string Touch = "touch current";
    public const string Leakage = "leakage";
    public const string Chassis = "chassis leakage, both ways of the plug";
}
