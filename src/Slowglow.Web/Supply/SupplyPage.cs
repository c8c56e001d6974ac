using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Logging;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.Questions;
using Slowglow.Sheets;
using Slowglow.Web.Bench;

namespace Slowglow.Web.Supply;

/// <summary>A page about the supply of the unit of a job: reads the job, follows it, and works answers out beside the page.</summary>
public abstract class SupplyPage : BenchComponent, IDisposable
{
    private int? readOf;
    private int under;

    /// <summary>Of the job.</summary>
    [Parameter]
    public int Number { get; set; }

    [Inject]
    private OpenJob OpenJob { get; set; } = null!;

    [Inject]
    private JobNews News { get; set; } = null!;

    [Inject]
    private SupplyAnswers Answers { get; set; } = null!;

    [Inject]
    private ILogger<SupplyPage> Log { get; set; } = null!;

    /// <summary>Null until it is read, and when there is no such job.</summary>
    public OpenedJob? Job { get; private set; }

    /// <summary>Of the job and its sheet.</summary>
    public IReadOnlyList<Finding> Findings { get; private set; } = [];

    /// <summary>Null where the sheet has errors.</summary>
    public SupplyLook? Look { get; private set; }

    public bool IsRead { get; private set; }

    /// <summary>What is being worked out; null when nothing is.</summary>
    public string? Working { get; private set; }

    /// <summary>A sentence when something could not be worked out; null otherwise.</summary>
    public string? Trouble { get; private set; }

    protected BenchUnit Unit => Job!.Unit!;

    public void Dispose()
    {
        News.Changed -= Changed;
        GC.SuppressFinalize(this);
    }

    protected sealed override async Task OnParametersSetAsync()
    {
        if (readOf != Number)
        {
            News.Changed -= Changed;
            News.Changed += Changed;
            readOf = Number;
            await ReadAsync();
        }

        if (Job?.Unit is not null && Look is { Refusal: null } && RendererInfo.IsInteractive)
        {
            await ArrivedAsync();
        }
    }

    /// <summary>Called when the job is there and its supply can be asked about, and whenever the address changes.</summary>
    protected virtual Task ArrivedAsync() => Task.CompletedTask;

    /// <summary>Works an answer out while the page stays alive; default when it fails, with a sentence on the page.</summary>
    /// <param name="what">"the steps".</param>
    /// <param name="question">Names question and wishes.</param>
    protected async Task<T?> WorkOutAsync<T>(string what, string question, Func<BenchUnit, CancellationToken, T> ask)
        where T : class
    {
        var unit = Unit;
        (Working, Trouble) = (what, null);
        under++;
        try
        {
            StateHasChanged();
            return await Answers.AskAsync(unit, question, cancel => ask(unit, cancel));
        }
        catch (Exception e)
        {
            // The page must survive a fault of the program.
            Log.LogError(e, "Job {Number}: {What} could not be worked out.", Number, what);
            Trouble = $"{char.ToUpperInvariant(what[0])}{what[1..]} could not be worked out, through a fault of the program.";
            return null;
        }
        finally
        {
            under--;
            Working = under == 0 ? null : Working;
        }
    }

    private async Task ReadAsync()
    {
        var opened = await OpenJob.RunAsync(Number);
        (Job, Findings, IsRead) = (opened.Value, opened.Findings, true);
        Look = Job?.Unit is { } unit ? new LookAtSupply(unit).Run() : null;
    }

    private void Changed(int number)
    {
        if (number == Number)
        {
            _ = InvokeAsync(async () =>
            {
                await ReadAsync();
                StateHasChanged();
            });
        }
    }
}
