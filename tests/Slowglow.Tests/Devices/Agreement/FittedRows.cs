namespace Slowglow.Tests.Devices.Agreement;

/// <summary>Which published rows the constants of the library were fitted to, as the devices' own sources say.</summary>
internal static class FittedRows
{
    private const string Rest = "valve_operating_points.csv";
    private const string Coupled = "valve_rc_coupled_stages.csv";
    private const string Output = "valve_output_stages.csv";

    private static readonly (string Valve, string Table, string Where, string Answer)[] Rules =
    [
        ("12AX7", Coupled, "Philips", "yes"),
        ("12AX7", Coupled, "Brimar", "in part"),
        ("12AX7", Coupled, "", "in part"),
        ("12AU7", Coupled, "", "in part"),
        ("12AY7", Rest, "RC-19", "no"),
        ("EF86", Rest, "1970", "yes"),
        ("EF86", Coupled, "supply_volts=200", "yes"),
        ("EF86", Coupled, "supply_volts=300", "yes"),
        ("EF86", Coupled, "supply_volts=400", "yes"),
        ("EL84", Rest, "triode-connected", "no"),
        ("EL84", Rest, "", "yes"),
        ("EL84", Output, "connection=pentode class=A ", "yes"),
        ("EL84", Output, "connection=pentode class=B", "yes"),
        ("6V6GT", Rest, "triode-connected", "no"),
        ("6V6GT", Rest, "", "yes"),
        ("6V6GT", Output, "connection=pentode class=A1", "yes"),
        ("6V6GT", Output, "load_ohms=10000 drive_volts_peak_total=0", "yes"),
        ("6V6GT", Output, "load_ohms=8000 drive_volts_peak_total=0", "yes"),
        ("EL34", Rest, "", "yes"),
        ("6L6GC", Rest, "", "yes"),
        ("6L6GC", Output, "", "yes"),
        ("KT66", Rest, "issue 4", "yes"),
        ("KT66", Output, "anode_volts=400", "yes"),
        ("6550", Rest, "", "yes"),
        ("6550", Output, "connection=pentode", "yes"),
        ("12AX7", Rest, "", "yes"),
        ("12AU7", Rest, "", "yes"),
        ("12AT7", Rest, "", "yes"),
        ("12AY7", Rest, "", "yes"),
        ("6SL7GT", Rest, "", "yes"),
        ("6CG7", Rest, "", "yes"),
        ("6SN7GT", Rest, "", "yes"),
        ("EZ80", "rectifier_valve_drops.csv", "", "yes"),
        ("", "rectifier_valve_drops.csv", "", "yes"),
    ];

    public static string Of(string valve, string table, string label)
    {
        var rule = Rules.FirstOrDefault(r =>
            (r.Valve.Length == 0 || r.Valve == valve) && r.Table == table && label.Contains(r.Where, StringComparison.Ordinal)
        );
        return rule.Answer ?? "no";
    }
}
