using Slowglow.Circuits;
using Slowglow.Diagnosis;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.Circuits;
using Xunit;

namespace Slowglow.Tests.Diagnosis;

/// <summary>Stories of the trade (common practice, no source): what hurt what, and what to look at before power goes back on.</summary>
public sealed class RootCauseTests
{
    private static readonly SheetOnBench Valve = SheetOnBench.From(
        """
        sheet: 1
        unit: Test bed
        mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
        parts:
          F1: fuse 500mA MAINS.L -> T1.1
          T1:
            is: transformer 60 VA
            windings:
              P: { pins: 1-2, volts: 230 V, ohms: 20 }
              HT: { pins: 3-4, volts: 240 V, amps: 120 mA, ohms: 60 }
          W2: wire MAINS.N -> T1.2
          D1: 1N4007 T1.3 -> HT
          D2: 1N4007 T1.4 -> HT
          D3: 1N4007 GND -> T1.3
          D4: 1N4007 GND -> T1.4
          C1: 47u 450V HT -> GND
          V1: 12AX7
          R1: 100k 0.5W HT -> V1.6
          R2: 1k5 V1.8 -> GND
          R3: 1M V1.7 -> GND
          C2: 22n 400V V1.6 -> V2.g
          R4: 470k V2.g -> GND
          V2: EL84
          R5: 220 1W V2.k -> GND
          C3: 100u 25V V2.k -> GND
          R6: 4k7 10W HT -> V2.a
          R7: 1k 1W HT -> V2.g2
        """
    );

    private static readonly SheetOnBench Transistors = SheetOnBench.From(
        """
        sheet: 1
        unit: Test bed
        mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
        parts:
          F1: fuse 1A MAINS.L -> T1.1
          T1:
            is: transformer 100 VA
            windings:
              P: { pins: 1-2, volts: 230 V, ohms: 10 }
              S: { pins: 3-4-5, volts: 22-0-22 V, amps: 2 A, ohms: 0.6 }
          W2: wire MAINS.N -> T1.2
          W3: wire T1.4 -> GND
          D1: 1N5404 T1.3 -> P30
          D2: 1N5404 T1.5 -> P30
          D3: 1N5404 N30 -> T1.3
          D4: 1N5404 N30 -> T1.5
          C1: 4700u 50V P30 -> GND
          C2: 4700u 50V GND -> N30
          Q1: TIP35C c=P30 b=B1 e=E1
          Q2: TIP36C c=N30 b=B2 e=E2
          R1: R22 1W E1 -> OUT
          R2: R22 1W OUT -> E2
          R3: 4k7 P30 -> B1
          R4: 4k7 B2 -> N30
          D5: 1N4148 B1 -> X
          D6: 1N4148 X -> B2
          R5: 8 20W OUT -> GND
        """
    );

    [Fact]
    public void A_shorted_reservoir_behind_a_blown_fuse_has_hurt_rectifier_and_transformer()
    {
        var result = Diagnose(Valve, "blows fuses", Cold(Valve, "C1", "0.3 ohm"), Cold(Valve, "F1", "OL ohm"));
        Assert.Equal("C1", result.Suspects[0].Part);
        Assert.Contains(result.RootCauses, c => c.Part == "T1" && c.Text.Contains("times its rating"));
        Assert.DoesNotContain(result.RootCauses, c => c.Part == "F1");
        Assert.StartsWith("Before power goes back on, check ", result.BeforePower, StringComparison.Ordinal);
        Assert.Contains("T1", result.BeforePower);
    }

    [Fact]
    public void A_shorted_output_transistor_has_burnt_an_emitter_resistor()
    {
        var result = Diagnose(Transistors, "blows fuses", Cold(Transistors, "Q1.c - Q1.e", "0.2 ohm"));
        Assert.Equal("Q1", result.Suspects[0].Part);
        var burnt = Assert.Single(result.RootCauses, c => c.Part == "R1");
        Assert.Contains("Q1", burnt.Victim);
        Assert.Contains("check it before the unit goes back to full mains", burnt.Text);
        Assert.Contains("overloaded by Q1", result.BeforePower);
    }

    /// <summary>The cathode resistor is open, and the readings speak against a leaky coupling capacitor alone: it is named all the same.</summary>
    [Fact]
    public void A_leaky_coupling_capacitor_is_looked_for_behind_a_cooked_cathode_resistor()
    {
        var result = Diagnose(Valve, "silent", Cold(Valve, "R5", "OL ohm"));
        Assert.Equal("R5", result.Suspects[0].Part);
        var cause = Assert.Single(result.RootCauses, c => c.Part == "C2");
        Assert.Equal("R5", cause.Victim);
        Assert.Contains("would put R5 at", cause.Text);
        Assert.Contains("check C2 before a new R5 goes in", cause.Text);
        Assert.Contains("could have killed R5", result.BeforePower);
    }

    [Fact]
    public void What_a_cold_reading_has_shown_to_be_good_is_not_to_be_checked_again()
    {
        var open = Cold(Transistors, "Q1.c - Q1.e", "0.2 ohm");
        var before = Diagnose(Transistors, "blows fuses", open);
        var after = Diagnose(Transistors, "blows fuses", open, Cold(Transistors, "R1", "0.22 ohm"));
        Assert.Contains(before.RootCauses, c => c.Part == "R1");
        Assert.DoesNotContain(after.RootCauses, c => c.Part == "R1");
    }

    [Fact]
    public void No_part_is_named_twice()
    {
        var result = Diagnose(Transistors, "blows fuses", Cold(Transistors, "P30 - GND", "0.5 ohm"));
        Assert.NotEmpty(result.RootCauses);
        Assert.Equal(result.RootCauses.Count, result.RootCauses.Select(c => c.Part).Distinct().Count());
    }

    private static DiagnosisResult Diagnose(SheetOnBench bench, string complaint, params Reading[] readings) =>
        new Diagnostician(bench.Worlds).Diagnose(
            new Evidence(complaint, [Setup.Default, Setup.Cold], readings),
            cancel: TestContext.Current.CancellationToken
        );

    private static Reading Cold(SheetOnBench bench, string where, string value)
    {
        var read = ReadingsReader.ReadLine($"{where} = {value} on cold", bench.Sheet, [Setup.Default, Setup.Cold]);
        Assert.True(read.Value is not null, string.Join('\n', read.Findings));
        return read.Value;
    }
}
