using Slowglow.Sheets.Devices;
using Slowglow.Tests.Devices.Stages;

namespace Slowglow.Tests.Devices.Agreement;

/// <summary>Every published valve figure that somebody read in a source, computed.</summary>
internal static class PublishedValves
{
    private static readonly string[] Where =
    [
        "connection",
        "class",
        "bias",
        "anode_volts",
        "anode_supply_volts",
        "supply_volts",
        "screen_volts",
        "grid_volts",
        "anode_load_kilohms",
        "screen_resistor_kilohms",
        "cathode_resistor_ohms",
        "following_grid_leak_kilohms",
        "load_ohms",
        "drive_volts_rms_per_grid",
        "drive_volts_peak_total",
        "anode_volts_rms",
        "source_resistance_ohms_per_anode",
        "first_capacitor_microfarads",
        "drop_volts",
        "dc_milliamps",
    ];

    public static IReadOnlyList<AgreementRow> All() =>
        [.. AtRest().Concat(Coupled()).Concat(Output()).Concat(Drops()).Concat(Supplies())];

    private static IEnumerable<AgreementRow> AtRest()
    {
        const string Table = "valve_operating_points.csv";
        foreach (var row in ValveRow.Read(Table))
        {
            var point = RestPoint.Of(row);
            var figures = new (string, string, double)[]
            {
                ("anode mA", "anode_milliamps", point.AnodeMilliamps),
                ("screen mA", "screen_milliamps", point.ScreenMilliamps),
                ("mA/V", "transconductance_milliamps_per_volt", point.Transconductance),
                ("anode kilohms", "anode_resistance_kilohms", point.AnodeKilohms),
                ("mu", row.Device.Kind == DeviceKind.Triode ? "amplification_factor" : "", point.Amplification),
            };
            foreach (var agreement in Rows(row, Table, figures))
            {
                yield return agreement;
            }
        }
    }

    private static IEnumerable<AgreementRow> Coupled()
    {
        const string Table = "valve_rc_coupled_stages.csv";
        foreach (
            var row in ValveRow.Read(Table).Where(r => r.Has("screen_resistor_kilohms") || r.Device.Kind == DeviceKind.Triode)
        )
        {
            var (anode, screen, gain) = CoupledStage.Of(row).Solve(row.Device);
            var figures = new (string, string, double)[]
            {
                ("anode mA", "anode_milliamps", anode * 1e3),
                ("screen mA", "screen_milliamps", screen * 1e3),
                ("cathode mA", "cathode_milliamps", (anode + screen) * 1e3),
                ("gain", "gain", gain),
            };
            foreach (var agreement in Rows(row, Table, figures))
            {
                yield return agreement;
            }
        }
    }

    private static IEnumerable<AgreementRow> Output()
    {
        const string Table = "valve_output_stages.csv";
        foreach (var row in ValveRow.Read(Table).Where(OutputStage.IsComplete))
        {
            var stage = OutputStage.Of(StageConditions.Of(row));
            var both =
                row["connection"] == "triode-connected" || row["note"].Contains("anode plus screen", StringComparison.Ordinal);
            var figures = new (string, string, double)[]
            {
                ("anode mA", "anode_milliamps_per_valve", stage.AnodeMilliamps + (both ? stage.ScreenMilliamps : 0)),
                ("screen mA", "screen_milliamps_per_valve", stage.ScreenMilliamps),
                ("W", "output_watts", stage.Watts),
            };
            foreach (var agreement in Rows(row, Table, figures))
            {
                yield return agreement;
            }
        }
    }

    private static IEnumerable<AgreementRow> Drops()
    {
        const string Table = "rectifier_valve_drops.csv";
        return ValveRow
            .Read(Table)
            .SelectMany(row =>
                Rows(row, Table, [("mA", "anode_milliamps", PlainValveLaw.Rectifier(row.Device, row.Number("drop_volts")) * 1e3)])
            );
    }

    private static IEnumerable<AgreementRow> Supplies()
    {
        const string Table = "rectifier_valve_outputs.csv";
        return ValveRow
            .Read(Table)
            .Where(RectifierSupply.IsComplete)
            .SelectMany(row => Rows(row, Table, [("dc V", "dc_volts", RectifierSupply.Volts(row))]));
    }

    private static IEnumerable<AgreementRow> Rows(
        ValveRow row,
        string table,
        (string Quantity, string Column, double Computed)[] figures
    )
    {
        var label = row.Where(Where);
        return figures
            .Where(f => f.Column.Length > 0 && row.Number(f.Column) > 0)
            .Select(f => new AgreementRow(
                row["valve"],
                table,
                label,
                f.Quantity,
                row.Number(f.Column),
                f.Computed,
                FittedRows.Of(row["valve"], table, $"{label} {row["source"]}"),
                row["source"]
            ));
    }
}
