using Slowglow.Circuits;
using Slowglow.Sheets.Parts.Transformer;
using Xunit;

namespace Slowglow.Tests.Circuits.Transformers;

/// <summary>Output transformers against the laws of a transformer: turns, series resistance and inductance, parallel inductance.</summary>
public sealed class OutputTransformerTests
{
    private static SheetOnBench Bench(string transformer, string rest = "") =>
        SheetOnBench.From(
            $$"""
            sheet: 1
            unit: Test bed
            mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
            parts:
              T1:
                is: transformer 5 VA
                windings:
                  P: { pins: 1-2, volts: 230 V }
                  S: { pins: 3-4, volts: 6 V }
              W1: wire MAINS.L -> T1.1
              W2: wire MAINS.N -> T1.2
              W3: wire T1.4 -> GND
              R9: 1k T1.3 -> GND
              T2: {{transformer}}
              R1: 8 10W OUT -> GND
            {{rest}}
            signal: { in: IN, out: OUT, source: 5k, level: 1 V }
            """
        );

    private const string Plain = """
        {is: "output transformer 5k:8 8 W", inductance: 20 H, leakage: 40 mH, windings: {P: {pins: 1-2, ohms: 1}, S: {pins: 3-4, ohms: 1m}}}
          W4: wire IN -> T2.1
          W5: wire GND -> T2.2
          W6: wire OUT -> T2.3
          W7: wire GND -> T2.4
        """;

    /// <summary>Matched: half the open volts at the primary, and the turns' share of that at the load.</summary>
    [Fact]
    public void A_matched_load_takes_half_the_open_volts()
    {
        var bench = Bench(Plain);
        Assert.Equal(0.5, bench.Volts("IN 1kHz"), 0.01);
        Assert.Equal(0.5 / Math.Sqrt(625), bench.Volts("OUT 1kHz"), 0.0003);
    }

    /// <summary>Half power where the leakage reactance equals source and load in series.</summary>
    [Fact]
    public void Treble_falls_by_3_dB_where_leakage_equals_source_and_load()
    {
        var bench = Bench(Plain);
        var hertz = (5000 + 5000 + 1 + (625 * 1e-3)) / (2 * Math.PI * 40e-3);
        var mid = bench.Volts("OUT 1kHz");
        Assert.Equal(mid / Math.Sqrt(2), bench.Volts(FormattableString.Invariant($"OUT {hertz:F0}Hz")), 0.005 * mid);
    }

    /// <summary>And bass where the primary inductance equals source and load in parallel.</summary>
    [Fact]
    public void Bass_falls_by_3_dB_where_inductance_equals_source_and_load_in_parallel()
    {
        var bench = Bench(Plain);
        var hertz = 2500 / (2 * Math.PI * 20);
        var mid = bench.Volts("OUT 1kHz");
        Assert.Equal(mid / Math.Sqrt(2), bench.Volts(FormattableString.Invariant($"OUT {hertz:F2}Hz")), 0.005 * mid);
    }

    [Fact]
    public void Unsaid_inductances_are_assumed_and_listed()
    {
        var sheet = Bench(Plain.Replace("inductance: 20 H, leakage: 40 mH, ", "", StringComparison.Ordinal)).Sheet;
        var part = sheet.Parts.OfType<TransformerPart>().Single(t => t.IsOutput);
        Assert.Equal(5000 / (2 * Math.PI * 30), part.PrimaryHenries, 1e-9);
        Assert.Equal(5000 / (2 * Math.PI * 50e3), part.LeakageHenries, 1e-9);
        Assert.Contains(sheet.Assumptions, a => a.Subject == "T2" && a.What.StartsWith("leakage", StringComparison.Ordinal));
        Assert.Contains(sheet.Assumptions, a => a.Subject == "T2" && a.What.StartsWith("inductance", StringComparison.Ordinal));
    }

    [Fact]
    public void Ultralinear_taps_stand_at_their_share_of_each_half()
    {
        var bench = Bench(
            """
            {is: "output transformer 5k:8 8 W", windings: {P: {pins: 1-2-3-4-5, taps: 43 %, ohms: 1}, S: {pins: 6-7, ohms: 1m}}}
              W4: wire IN -> T2.1
              W5: wire GND -> T2.3
              W6: wire OUT -> T2.6
              W7: wire GND -> T2.7
              R2: 10M T2.5 -> GND
              R3: 10M T2.4 -> GND
              R4: 10M T2.2 -> GND
            """
        );
        var half = bench.Volts("T2.1 1kHz");
        Assert.Equal(0.43 * half, bench.Volts("T2.2 1kHz"), 0.002 * half);
        Assert.Equal(0.43 * half, bench.Volts("T2.4 1kHz"), 0.002 * half);
        Assert.Equal(half, bench.Volts("T2.5 1kHz"), 0.002 * half);
    }

    /// <summary>A tenth of the turns shorted within themselves: ten times the copper across the core, by turns squared.</summary>
    [Theory]
    [InlineData("", 10 * 50.0)]
    [InlineData("S", 10 * 0.08 * 625)]
    public void Shorted_turns_load_the_core(string winding, double ohms)
    {
        var bench = Bench(
            Plain
                .Replace("ohms: 1m", "ohms: 0.08", StringComparison.Ordinal)
                .Replace("ohms: 1}", "ohms: 50}", StringComparison.Ordinal)
        );
        var shorted = bench.Volts("IN 1kHz", null, new Fault("T2", winding, FailureMode.Short));
        var load = 1 / ((1 / ohms) + (1 / (5000 + (0.08 * 625))));
        Assert.Equal((50 + load) / (5000 + 50 + load), shorted, 0.01 * shorted);
    }
}
