namespace Slowglow.Circuits;

/// <summary>In which way a part has failed. What the severity of a fault means depends on it.</summary>
public enum FailureMode
{
    /// <summary>Open circuit: part, winding, junction, wire, blown fuse. Severity unused (0).</summary>
    Open,

    /// <summary>Short circuit between the ends, or of the junction or winding named. Severity unused (0).</summary>
    Short,

    /// <summary>Leaks. Severity = ohms of the leak.</summary>
    Leaky,

    /// <summary>Value has drifted. Severity = factor on the value, above 1 (up) or below 1 (down).</summary>
    Drifted,

    /// <summary>Valve section with low emission. Severity = fraction of the current left.</summary>
    LowEmission,

    /// <summary>Valve section or whole device that conducts nothing. Severity unused (0).</summary>
    Dead,

    /// <summary>Dried-out electrolytic. Severity = fraction of the capacitance left; series resistance rises with it.</summary>
    DriedOut,

    /// <summary>Output stuck near the positive rail (op-amp), or too high (regulator: input passes through). Severity unused (0).</summary>
    StuckHigh,

    /// <summary>Output stuck near the negative rail. Severity unused (0).</summary>
    StuckLow,

    /// <summary>Contact, joint, wiper or holder that conducts badly: dirty, worn or dry. Severity = ohms in series.</summary>
    BadContact,

    /// <summary>Valve section with gas in it: ions carry current out of the grid. Severity = that current over the anode's.</summary>
    Gassy,

    /// <summary>Another value than the drawing's was fitted. Severity = factor on the value.</summary>
    WrongValue,

    /// <summary>Fitted the wrong way round: anode for cathode, plus for minus, collector for emitter. Severity unused (0).</summary>
    Backwards,
}
