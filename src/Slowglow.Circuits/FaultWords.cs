using Slowglow.Quantities;

namespace Slowglow.Circuits;

/// <summary>Says a fault in the trade's words.</summary>
public static class FaultWords
{
    /// <summary>"R5 open", "C4 leaky 470 kohm", "Q3 c-e short".</summary>
    public static string Say(Fault fault)
    {
        var who = fault.Where.Length switch
        {
            0 => fault.Part,
            _ when char.IsDigit(fault.Where[0]) => $"{fault.Part} section {fault.Where}",
            _ => $"{fault.Part} {fault.Where}",
        };
        return $"{who} {SayMode(fault.Mode, fault.Severity)}";
    }

    /// <summary>The mode alone: "open", "leaky 470 kohm", "drifted to 3 times its value".</summary>
    public static string SayMode(FailureMode mode, double severity) =>
        mode switch
        {
            FailureMode.Open => "open",
            FailureMode.Short => "short",
            FailureMode.Leaky => $"leaky {Engineering.Format(severity, "ohm", 2)}",
            FailureMode.Drifted when severity >= 1 => $"drifted up, {Engineering.Format(severity, "times", 2)} its value",
            FailureMode.Drifted => $"drifted down, {Engineering.Format(severity * 100, "%", 2)} of its value",
            FailureMode.LowEmission => $"low emission {Engineering.Format(severity * 100, "%", 2)}",
            FailureMode.Dead => "dead",
            FailureMode.DriedOut => $"dried out, {Engineering.Format(severity * 100, "%", 2)} of its capacitance left",
            FailureMode.StuckHigh => "output stuck high",
            FailureMode.StuckLow => "output stuck low",
            FailureMode.BadContact => $"bad contact {Engineering.Format(severity, "ohm", 2)}",
            FailureMode.Gassy => $"gassy {Engineering.Format(severity * 100, "%", 2)}",
            FailureMode.WrongValue => $"wrong value fitted, {Engineering.Format(severity, "times", 2)} the drawing's",
            FailureMode.Backwards => "fitted backwards",
            _ => mode.ToString(),
        };
}
