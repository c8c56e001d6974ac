namespace Slowglow.Tests.Circuits;

/// <summary>Sheets with a rectified rail HT of a few hundred volts, stiff enough to be taken as a source.</summary>
internal static class HighTension
{
    /// <param name="volts">Of the rail, give or take the rectifier's drop.</param>
    /// <param name="parts">Lines under parts:, each indented by two blanks.</param>
    /// <param name="more">Further sections of the sheet.</param>
    public static SheetOnBench Of(double volts, string parts, string more = "") =>
        SheetOnBench.From(
            FormattableString.Invariant(
                $$"""
                sheet: 1
                unit: Test bed
                mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
                parts:
                  T1:
                    is: transformer 200 VA
                    windings:
                      P: { pins: 1-2, volts: 230 V, ohms: 1 }
                      S: { pins: 3-4, volts: {{(volts + 1.2) / Math.Sqrt(2):F3}} V, ohms: 1 }
                  W1: wire MAINS.L -> T1.1
                  W2: wire MAINS.N -> T1.2
                  D1: 1N4007 T1.3 -> HT
                  D2: 1N4007 T1.4 -> HT
                  D3: 1N4007 GND -> T1.3
                  D4: 1N4007 GND -> T1.4
                  C1: 470u 450V HT -> GND
                {{parts}}
                {{more}}
                """
            )
        );
}
