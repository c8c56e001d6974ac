using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Power.Energy;
using Slowglow.Sheets;

namespace Slowglow.Web.Pages.Supply;

/// <summary>What the reservoirs hold after switch-off.</summary>
public sealed partial class StoredEnergyPage
{
    private IReadOnlyList<StoredCharge>? charges;
    private IReadOnlyList<Finding> wrong = [];
    private string typed = "";
    private string shown = "";

    protected override Task ArrivedAsync() => charges is null && wrong.Count == 0 ? AskAsync() : Task.CompletedTask;

    private async Task AskAsync()
    {
        var words = typed.Trim();
        IReadOnlyList<Fault> faults = [];
        wrong = [];
        if (words.Length > 0)
        {
            var read = FaultReader.Read(words, Unit.Circuit);
            wrong = read.HasErrors ? read.Findings : [];
            faults = read.Value is { } fault ? [fault] : [];
        }

        if (wrong.Count == 0)
        {
            charges = await WorkOutAsync(
                "what the reservoirs hold",
                $"stored energy {words}",
                (unit, cancel) => new StressUnit(unit).Charges(faults, cancel)
            );
            shown = words;
        }
    }

    private static double Longest(StoredCharge charge) =>
        Math.Max(Math.Max(charge.SecondsTo60, charge.SecondsTo35), charge.SecondsWithout);
}
