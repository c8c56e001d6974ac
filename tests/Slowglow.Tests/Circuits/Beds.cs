using Slowglow.Circuits;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Circuits;

/// <summary>Small units for tests to ask questions of.</summary>
internal static class Beds
{
    /// <summary>Plus and minus 15 V, regulated.</summary>
    public const string Rails15 = """
        sheet: 1
        unit: Test bed
        mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
        parts:
          T1:
            is: transformer 20 VA
            windings:
              P: { pins: 1-2, volts: 230 V, ohms: 60 }
              S: { pins: 3-4-5, volts: 18-0-18 V, amps: 500 mA, ohms: 4 }
          W1: wire MAINS.L -> T1.1
          W2: wire MAINS.N -> T1.2
          W3: wire T1.4 -> GND
          D1: 1N4007 T1.3 -> RAWP
          D2: 1N4007 T1.5 -> RAWP
          D3: 1N4007 RAWN -> T1.3
          D4: 1N4007 RAWN -> T1.5
          C1: 2200u 35V RAWP -> GND
          C2: 2200u 35V GND -> RAWN
          U1: { is: L7815, in: RAWP, gnd: GND, out: P15 }
          U2: { is: L7915, in: RAWN, gnd: GND, out: N15 }
          C3: 10u 25V P15 -> GND
          C4: 10u 25V GND -> N15
        """;

    /// <summary>A high-tension rail of about 350 V, smoothed well.</summary>
    public const string HighTension = """
        sheet: 1
        unit: Test bed
        mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
        parts:
          T1:
            is: transformer 60 VA
            windings:
              P: { pins: 1-2, volts: 230 V, ohms: 20 }
              S: { pins: 3-4, volts: 255 V, amps: 100 mA, ohms: 100 }
          W1: wire MAINS.L -> T1.1
          W2: wire MAINS.N -> T1.2
          D1: 1N4007 T1.3 -> RAW
          D2: 1N4007 T1.4 -> RAW
          D3: 1N4007 GND -> T1.3
          D4: 1N4007 GND -> T1.4
          C1: 47u 450V RAW -> GND
          R1: 1k 2W RAW -> HT
          C2: 100u 450V HT -> GND
        """;

    public static SheetOnBench Build(string supply, string parts, string signal) =>
        SheetOnBench.From($"{supply}\n{parts}\nsignal: {signal}\n");

    /// <summary>A few parts without any supply.</summary>
    public static SheetOnBench Passive(string parts, string signal) =>
        SheetOnBench.From($"sheet: 1\nunit: Test bed\nparts:\n{parts}\nsignal: {signal}\n");

    public static World World(this SheetOnBench bench, params Fault[] faults) => bench.WorldIn(Setup.Default, faults);

    public static World WorldIn(this SheetOnBench bench, Setup setup, params Fault[] faults) =>
        bench.Worlds.World(setup, faults, TestContext.Current.CancellationToken);
}
