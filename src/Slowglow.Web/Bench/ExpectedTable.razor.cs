using Microsoft.AspNetCore.Components;
using Slowglow.Sheets.Readings;
using Slowglow.Web.Bench.Words;
using Slowglow.Web.Desks;

namespace Slowglow.Web.Bench;

/// <summary>Every point: what belongs there, within what band, and what was measured.</summary>
public sealed partial class ExpectedTable
{
    private string filter = "";

    [Parameter, EditorRequired]
    public DeskPicture Picture { get; set; } = null!;

    private IReadOnlyList<PointRow> Measured => [.. PointRows.Measured(Picture).Where(r => r.Matches(filter))];

    private IReadOnlyList<PointRow> Unmeasured => [.. PointRows.Unmeasured(Picture).Where(r => r.Matches(filter))];

    private static string Belongs(PointRow row) =>
        double.IsFinite(row.Nominal) ? Figures.Value(row.Nominal, row.Probe.Unit) : Figures.Without(row.Kind);

    private static string Said(PointRow row) =>
        row.Measured!.Reading.Said == MeterSaid.Overload ? "OL" : Figures.Value(row.Measured.Reading.Value, row.Probe.Unit, 4);

    private Task WithdrawAsync(PointRow row) => WithdrawReading.RunAsync(Picture.Job!.Job.Number, row.Measured!.Sequence);
}
