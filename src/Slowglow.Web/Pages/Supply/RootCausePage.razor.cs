using Microsoft.AspNetCore.Components;
using Slowglow.Bench.Questions;
using Slowglow.Power.Overload;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts;

namespace Slowglow.Web.Pages.Supply;

/// <summary>Which other faults overload a part that has died.</summary>
public sealed partial class RootCausePage
{
    private const int Most = 25;
    private IReadOnlyList<OverloadCause>? causes;
    private SwitchOn? switchOn;
    private IReadOnlyList<Finding> wrong = [];
    private string typed = "";
    private string shown = "";

    /// <summary>The part, so that other pages can lead here.</summary>
    [SupplyParameterFromQuery(Name = "part")]
    private string? Asked { get; set; }

    private Part Dead => Unit.Sheet.Parts.First(p => p.Designator.Equals(shown, StringComparison.OrdinalIgnoreCase));

    protected override Task ArrivedAsync()
    {
        if (typed.Length > 0 || Look!.Parts.Count == 0)
        {
            return Task.CompletedTask;
        }

        typed = Asked ?? Look.Transformers.Concat(Look.Parts).First();
        return AskAsync();
    }

    private async Task AskAsync()
    {
        var name = typed.Trim();
        var answer = await WorkOutAsync(
            $"what overloads {name}",
            $"overload {name}",
            (unit, cancel) => new FindOverloads(unit).Run(name, cancel)
        );
        (causes, switchOn, wrong, shown) = (answer?.Value?.Causes, answer?.Value?.SwitchOn, answer?.Findings ?? [], name);
    }
}
