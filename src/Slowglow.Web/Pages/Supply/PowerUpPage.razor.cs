using Microsoft.AspNetCore.Components;
using Slowglow.Bench.Questions;
using Slowglow.Power.PowerUp;
using Slowglow.Sheets;

namespace Slowglow.Web.Pages.Supply;

/// <summary>The first power-up, used standing up. Lamp, valves and step are in the address, so that the page comes back as it was.</summary>
public sealed partial class PowerUpPage
{
    private PowerUpPlan? plan;
    private string planned = "";
    private string lampTyped = "";
    private bool valvesOut = true;
    private IReadOnlyList<Finding> wrong = [];

    [SupplyParameterFromQuery(Name = "lamp")]
    private string? Lamp { get; set; }

    [SupplyParameterFromQuery(Name = "valves")]
    private string? Valves { get; set; }

    [SupplyParameterFromQuery(Name = "step")]
    private int? Step { get; set; }

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    private bool HasValves => new LookAtSupply(Unit).HasValves;

    private int StepAt => Math.Clamp((Step ?? 1) - 1, 0, plan!.Steps.Count - 1);

    protected override async Task ArrivedAsync()
    {
        var wish = $"{Lamp}|{Valves}";
        if (wish == planned)
        {
            return;
        }

        planned = wish;
        (lampTyped, valvesOut, plan) = (Lamp ?? "", Valves != "in", null);
        var lamp = LampWords.Read(lampTyped);
        wrong = lamp.Findings;
        if (lamp.Value is not { } hand)
        {
            return;
        }

        var pulled = valvesOut;
        var answer = await WorkOutAsync(
            "the steps",
            $"power-up {wish}",
            (unit, cancel) => new PlanPowerUp(unit).Run(hand.Watts, pulled, cancel)
        );
        (plan, wrong) = (answer?.Value, answer?.Findings ?? []);
    }

    private void PlanAnew()
    {
        wrong = LampWords.Read(lampTyped).Findings;
        if (wrong.Count == 0)
        {
            Lead(lampTyped.Trim(), valvesOut ? "" : "in", 1);
        }
    }

    private void GoTo(int step) => Lead(Lamp ?? "", Valves ?? "", step + 1);

    private void Lead(string lamp, string valves, int step) =>
        Navigation.NavigateTo(
            Navigation.GetUriWithQueryParameters(
                new Dictionary<string, object?>
                {
                    ["lamp"] = lamp.Length > 0 ? lamp : null,
                    ["valves"] = valves.Length > 0 ? valves : null,
                    ["step"] = step,
                }
            ),
            replace: true
        );
}
