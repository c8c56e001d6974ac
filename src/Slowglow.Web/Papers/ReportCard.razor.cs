using System.Globalization;
using Microsoft.AspNetCore.Components;
using Slowglow.Bench.Papers.Reporting;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Web.Papers;

/// <summary>The report: begun from the bench, looked over and written by the technician. The last one written counts.</summary>
public sealed partial class ReportCard
{
    private readonly HashSet<string> photos = [];
    private bool filled;
    private bool drafting;
    private string basis = "";
    private string found = "";
    private string why = "";
    private string done = "";
    private string advice = "";
    private string readings = "";
    private string months = "";

    [Inject]
    private DraftReport Draft { get; set; } = null!;

    protected override void OnParametersSet()
    {
        if (filled)
        {
            return;
        }

        filled = true;
        months = File.Rules.WarrantyMonths.ToString(CultureInfo.InvariantCulture);
        if (File.Dealings.Report is { } report)
        {
            (found, why, done, advice) = (report.Found, report.Why, report.Done, report.Advice);
            readings = Lines(report.Readings);
            months = report.WarrantyMonths.ToString(CultureInfo.InvariantCulture);
            photos.UnionWith(report.Photos ?? []);
        }
    }

    // PDF pages take JPEG and PNG.
    private static bool IsPrinted(string file) => !file.EndsWith(".webp", StringComparison.Ordinal);

    private static string Lines(IEnumerable<BeforeAfter> rows) =>
        string.Join('\n', rows.Select(r => $"{r.Where}; {r.Before}; {r.After}; {r.Belongs}".TrimEnd(' ', ';')));

    private static string Kept(string typed, string drafted) => typed.Trim().Length > 0 ? typed : drafted;

    private void Choose(string file, bool printed)
    {
        if (printed)
        {
            photos.Add(file);
        }
        else
        {
            photos.Remove(file);
        }
    }

    /// <summary>Fills what is empty: nothing that somebody typed is lost.</summary>
    private async Task DraftAsync()
    {
        drafting = true;
        var draft = await Draft.RunAsync(File.Job.Number);
        drafting = false;
        Wrong = draft.Findings;
        if (draft.Value is not { } begun)
        {
            return;
        }

        basis = Say(begun.Basis);
        found = Kept(found, Say(begun.Report.Found));
        why = Kept(why, Say(begun.Report.Why));
        done = Kept(done, begun.Report.Done);
        readings = Kept(readings, Lines(begun.Report.Readings));
    }

    private async Task WriteAsync()
    {
        if (Whole(months, "the months of warranty") is { } warranty)
        {
            var rows = readings
                .Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                .Select(Row)
                .ToArray();
            var printed = File.Dealings.Photos.Select(p => p.File).Where(photos.Contains).Distinct().ToArray();
            await EnterAsync(() =>
                new ReportWritten { What = new(found.Trim(), why.Trim(), done.Trim(), advice.Trim(), rows, warranty, printed) }
            );
        }
    }

    private static BeforeAfter Row(string line)
    {
        var cells = line.Split(';', StringSplitOptions.TrimEntries);
        return new(
            cells[0],
            cells.ElementAtOrDefault(1) ?? "",
            cells.ElementAtOrDefault(2) ?? "",
            cells.ElementAtOrDefault(3) ?? ""
        );
    }
}
