using Slowglow.Power.PowerUp;
using Slowglow.Power.Supplies;
using Slowglow.Sheets;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>How to bring a unit up for the first time after a repair.</summary>
public sealed class PlanPowerUp(BenchUnit unit)
{
    /// <summary>The plan, or why none is made.</summary>
    /// <param name="lampWatts">Limiter lamp, watts &gt; 0; null = the one that suits.</param>
    /// <param name="valvesOut">Start with the valves pulled.</param>
    public Parsed<PowerUpPlan> Run(double? lampWatts, bool valvesOut, CancellationToken cancel = default)
    {
        var refusal = MainsSide.Of(unit.Sheet).Refusal;
        var rails = Rails.Of(unit.Sheet, Setup.Default);
        return refusal is not null ? Wrong(refusal)
            : rails.Count == 0 ? Wrong("no supply rail is found: nothing with a reservoir is fed from a rectifier")
            : new(new PowerUpQuestion(unit.Worlds, rails).Ask(lampWatts, valvesOut, cancel), []);
    }

    private static Parsed<PowerUpPlan> Wrong(string text) => new(null, [new(Severity.Error, Place.None, text)]);
}
