using Microsoft.AspNetCore.Components;
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

    private IEnumerable<(string Title, IReadOnlyList<PointRow> Rows)> NotMeasured
    {
        get
        {
            var rows = Unmeasured;
            yield return ("Not measured yet", [.. rows.Where(r => !r.IsNothing)]);
            yield return ("Not measured yet, and nothing belongs there", [.. rows.Where(r => r.IsNothing)]);
        }
    }

    private IReadOnlyList<PointRow> Unmeasured => [.. PointRows.Unmeasured(Picture).Where(r => r.Matches(filter))];

    private static string Belongs(PointRow row) =>
        row.IsNothing ? $"0 {row.Probe.Unit}"
        : double.IsFinite(row.Nominal) ? Figures.Value(row.Nominal, row.Probe.Unit)
        : Figures.Without(row.Kind);

    private static string Band(PointRow row) => row.IsNothing ? "under 5 mV" : Figures.Band(row.Low, row.High, row.Probe.Unit);

    private static string Said(PointRow row) =>
        row.Measured!.Reading.Shown ?? Figures.Value(row.Measured.Reading.Value, row.Probe.Unit, 4);

    private Task WithdrawAsync(PointRow row) => WithdrawReading.RunAsync(Picture.Job!.Job.Number, row.Measured!.Sequence);
}
