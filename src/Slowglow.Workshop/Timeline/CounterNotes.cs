using Slowglow.Workshop.Money;

namespace Slowglow.Workshop.Timeline;

/// <summary>What was noted at the counter besides the complaint. Text may be empty.</summary>
/// <param name="Setting">On which control setting, channel or input it shows.</param>
/// <param name="JustBefore">What happened just before it first showed.</param>
/// <param name="Condition">Dents, missing knobs, smells.</param>
/// <param name="CameWith">Lead, cover, footswitch.</param>
/// <param name="Worth">What the owner says it is worth; null when not asked.</param>
/// <param name="BenchFee">Agreed for looking into it; null when none.</param>
/// <param name="EarlierJob">Number of the job it comes back from; null otherwise.</param>
public sealed record CounterNotes(
    string Setting,
    string JustBefore,
    string Condition,
    string CameWith,
    Amount? Worth,
    Amount? BenchFee,
    int? EarlierJob
);
