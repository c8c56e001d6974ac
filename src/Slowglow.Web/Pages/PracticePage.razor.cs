using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Logging;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.Questions;
using Slowglow.Bench.Rehearsals;
using Slowglow.Bench.Rehearsals.Practice;
using Slowglow.Sheets;
using Slowglow.Web.Desks;
using Slowglow.Web.Practice;

namespace Slowglow.Web.Pages;

/// <summary>A learner against a hidden fault. The address names the unit and the number, so that a reload goes on where it stood.</summary>
public sealed partial class PracticePage : IDisposable
{
    private CancellationTokenSource running = new();
    private IReadOnlyList<JobLine> units = [];
    private IReadOnlyList<Finding> wrong = [];
    private BenchUnit? unit;
    private PracticeRound? round;
    private RehearsalCase? way;
    private (int Job, int Number)? shown;
    private string? work;
    private int job;
    private string typed = "1";

    [Parameter]
    public int Job { get; set; }

    [Parameter]
    public int Number { get; set; }

    [Inject]
    private ListJobs ListJobs { get; set; } = null!;

    [Inject]
    private OpenJob OpenJob { get; set; } = null!;

    [Inject]
    private PracticeRounds Rounds { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    [Inject]
    private ILogger<PracticePage> Log { get; set; } = null!;

    public void Dispose() => running.Cancel();

    protected override async Task OnParametersSetAsync()
    {
        if (units.Count == 0)
        {
            units = await ListJobs.DrawnAsync();
            job = units.FirstOrDefault()?.Number ?? 0;
        }

        // Drawn once on the server before it can answer: the solving waits until it can.
        if (Number != 0 && shown != (Job, Number) && RendererInfo.IsInteractive)
        {
            (shown, job, typed) = ((Job, Number), Job, Number.ToString(CultureInfo.InvariantCulture));
            await OpenAsync();
        }
    }

    private void Begin()
    {
        if (
            !int.TryParse(typed.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            || number is < 1 or > StartPractice.MostUnits
        )
        {
            wrong =
            [
                new(
                    Severity.Error,
                    Place.None,
                    $"'{typed}' is no number of a unit.",
                    $"a number from 1 to {StartPractice.MostUnits}"
                ),
            ];
            return;
        }

        wrong = [];
        Navigation.NavigateTo($"/practice/{job}/{number}");
    }

    private async Task OpenAsync()
    {
        (round, way, wrong) = (null, null, []);
        var opened = await OpenJob.RunAsync(Job);
        if (opened.Value?.Unit is not { } found)
        {
            wrong =
                opened.Findings.Count > 0
                    ? opened.Findings
                    : [new(Severity.Error, Place.None, "This job has no sheet to practise on.", "another unit")];
            return;
        }

        unit = found;
        var begun = await WorkAsync(
            "Breaking something in it",
            cancel => Rounds.Of(found, Number, new StepProgress(_ => { }), cancel)
        );
        (round, wrong) = (begun?.Value, begun?.Findings ?? wrong);
        if (round is { IsOver: true })
        {
            await EndAsync();
        }
    }

    private async Task EndAsync()
    {
        var on = round!;
        way = await WorkAsync("Letting the program try", on.ProgramsWay);
    }

    private async Task AgainAsync()
    {
        Rounds.Forget(unit!, Number);
        await OpenAsync();
    }

    private void Stop() => running.Cancel();

    /// <summary>Off the page's thread, so that the page stays awake; null when it was stopped.</summary>
    private async Task<T?> WorkAsync<T>(string what, Func<CancellationToken, T> solve)
        where T : class
    {
        running = new CancellationTokenSource();
        var cancel = running.Token;
        work = what;
        StateHasChanged();
        try
        {
            return await Task.Run(() => solve(cancel), cancel);
        }
        catch (OperationCanceledException)
        {
            wrong = [new(Severity.Note, Place.None, "Stopped.", "")];
            shown = null;
            return null;
        }
        catch (Exception e)
        {
            Log.LogError(e, "A round of practice on job {Job}, unit {Number}, failed.", Job, Number);
            wrong =
            [
                new(
                    Severity.Error,
                    Place.None,
                    "This could not be worked out, through a fault of the program.",
                    "another number"
                ),
            ];
            return null;
        }
        finally
        {
            work = null;
        }
    }
}
