using Slowglow.Tests.Circuits;

namespace Slowglow.Tests.Devices.Stages;

/// <summary>A full-wave rectifier valve into a reservoir, as a sheet on the bench: the load is the resistance that the published figures make.</summary>
internal static class RectifierSupply
{
    public static bool IsComplete(ValveRow row) =>
        row["filter"] == "capacitor" && row.Has("source_resistance_ohms_per_anode") && row["confidence"] != "memory";

    public static double Volts(ValveRow row)
    {
        var amps = row.Number("dc_milliamps") / 1e3;
        var load = amps > 0 ? row.Number("dc_volts") / amps : 10e6;
        var device = row.Device;
        string Pin(string electrode, int section) =>
            device.Pinout.First(p => p.Electrode == electrode && (p.Section == section || p.Section == 0)).Number;
        return SheetOnBench
            .From(
                FormattableString.Invariant(
                    $$"""
                    sheet: 1
                    unit: Test bed
                    mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
                    parts:
                      T1:
                        is: transformer 500 VA
                        windings:
                          P: { pins: 1-2, volts: 230 V, ohms: 0.01 }
                          S: { pins: 3-4-5, volts: {{row["anode_volts_rms"]}}-0-{{row["anode_volts_rms"]}} V, ohms: {{2
                        * row.Number("source_resistance_ohms_per_anode")}} }
                      W1: wire MAINS.L -> T1.1
                      W2: wire MAINS.N -> T1.2
                      W3: wire T1.4 -> GND
                      V1: {{row["valve"]}} {{Pin("a", 1)}}=T1.3 {{Pin("a", 2)}}=T1.5 {{Pin("k", 1)}}=HT
                      C1: {{row["first_capacitor_microfarads"]}}u 600V HT -> GND
                      R1: {{load}} 500W HT -> GND
                    """
                )
            )
            .Volts("HT");
    }
}
