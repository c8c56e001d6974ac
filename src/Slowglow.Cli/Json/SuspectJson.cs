using Slowglow.Circuits;
using Slowglow.Diagnosis;

namespace Slowglow.Cli.Json;

/// <summary>A part, or a group that no reading on offer can tell apart.</summary>
/// <param name="Fault">open, short, leaky, drifted, low emission, dead, dried out, stuck high, stuck low, bad contact, gassy, wrong value or backwards.</param>
/// <param name="Severity">Ohms of a leak or a bad contact, factor of a drift or a wrong value, grid over anode current, share left of emission or capacitance; null where the fault has no degree.</param>
/// <param name="At">Section, electrodes or winding concerned; empty for the whole part.</param>
/// <param name="Second">The other fault where two are at work at once, and both of the group are to be replaced; null otherwise.</param>
internal sealed record SuspectJson(
    string Part,
    string Fault,
    double? Severity,
    double Probability,
    IReadOnlyList<string> Group,
    IReadOnlyList<string> Explains,
    string At,
    string Words,
    IReadOnlyList<string> Misfits,
    string Separates,
    string? Second,
    string History
)
{
    public static SuspectJson From(Suspect s) =>
        new(
            s.Part,
            Word(s.Fault.Mode),
            HasDegree(s.Fault.Mode) ? s.Fault.Severity : null,
            s.Probability,
            s.Group,
            s.Explains,
            s.Fault.Where,
            s.Words,
            s.Misfits,
            s.Separates,
            s.Second?.ToString(),
            s.History
        );

    private static bool HasDegree(FailureMode mode) =>
        mode
            is not (
                FailureMode.Open
                or FailureMode.Short
                or FailureMode.Dead
                or FailureMode.StuckHigh
                or FailureMode.StuckLow
                or FailureMode.Backwards
            );

    private static string Word(FailureMode mode) =>
        mode switch
        {
            FailureMode.Open => "open",
            FailureMode.Short => "short",
            FailureMode.Leaky => "leaky",
            FailureMode.Drifted => "drifted",
            FailureMode.LowEmission => "low emission",
            FailureMode.Dead => "dead",
            FailureMode.DriedOut => "dried out",
            FailureMode.StuckHigh => "stuck high",
            FailureMode.BadContact => "bad contact",
            FailureMode.Gassy => "gassy",
            FailureMode.WrongValue => "wrong value",
            FailureMode.Backwards => "backwards",
            _ => "stuck low",
        };
}
