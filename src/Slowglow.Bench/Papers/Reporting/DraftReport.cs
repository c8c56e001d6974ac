using Slowglow.Bench.Jobs;
using Slowglow.Bench.Questions;
using Slowglow.Diagnosis;
using Slowglow.Sheets;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Papers;

namespace Slowglow.Bench.Papers.Reporting;

/// <summary>
/// Begins the report of a job: what was wrong and why it sounded like that, from what the bench makes of the readings that were taken before the repair;
/// readings before and after; what was done, from parts and hours. Nothing is stored.
/// </summary>
public sealed class DraftReport(ReadJobFile read, OpenJob open)
{
    public async Task<Parsed<ReportDraft>> RunAsync(int jobNumber, CancellationToken cancel = default)
    {
        var file = await read.RunAsync(jobNumber, cancel);
        if (file.Value is not { } job)
        {
            return new(null, file.Findings);
        }

        var opened = (await open.RunAsync(jobNumber, cancel)).Value!;
        return new(await Task.Run(() => Draft(job, opened, cancel), cancel), []);
    }

    private static ReportDraft Draft(JobFile file, OpenedJob opened, CancellationToken cancel)
    {
        var dealings = file.Dealings;
        var done = ReportSentences.Done(dealings);
        if (opened.Unit is not { } unit)
        {
            var noted = ReportSentences.Found(null, dealings, null, []);
            BeforeAfter[] typed = [.. opened.Standing.Readings.Select(r => Typed(r.Line))];
            return new(
                new(noted, "", done, "", typed, file.Rules.WarrantyMonths),
                "There is no drawing with this job: the fault and the reason are yours to write."
            );
        }

        var repaired = RepairMoment.Of(dealings);
        var before = opened with { Readings = [.. opened.Readings.Where(r => r.Sequence < repaired)] };
        var diagnosis = unit.Diagnostician.Diagnose(before.Evidence, null, cancel);
        var settled = SettledSuspect.Of(diagnosis, dealings, unit.Circuit);
        var levels = settled is { Suspect.Second: null } ? new CompareLevels(unit).Run(settled.Fault, cancel) : null;
        var readings = before.Readings.SelectMany(r => r.Reading.Each()).ToList();
        var report = new RepairReport(
            ReportSentences.Found(settled, dealings, unit.Sheet, readings),
            ReportSentences.Why(settled, levels),
            done,
            "",
            ReportRows.Of(opened, unit, repaired, cancel),
            file.Rules.WarrantyMonths
        );
        return new(report, Basis(settled, before.Readings.Count));
    }

    private static string Basis(SettledSuspect? settled, int readings)
    {
        var from = readings switch
        {
            0 => "no reading",
            1 => "1 reading",
            _ => FormattableString.Invariant($"{readings} readings"),
        };
        return settled is null
            ? $"No suspect is likely enough to be named from {from}: write down what was found (a note that begins with \"found\"), or say it here."
            : FormattableString.Invariant(
                $"Settled on {settled.Part} {settled.By}; weighed from {from} before the repair it has {Share(settled.Suspect)}. Look every sentence over."
            );
    }

    private static string Share(Suspect suspect) =>
        suspect.Probability < 0.01 ? "under 1 %" : FormattableString.Invariant($"{suspect.Probability * 100:0} %");

    private static BeforeAfter Typed(string line)
    {
        var sides = line.Split('=', 2);
        return new(sides[0].Trim(), sides.Length > 1 ? sides[1].Trim() : "", "");
    }
}
