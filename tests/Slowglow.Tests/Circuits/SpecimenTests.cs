using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Circuits;

/// <summary>A specimen is the nominal circuit with its parameters moved: a divider worked by hand.</summary>
public class SpecimenTests
{
    private const string Divider = """
        sheet: 1
        unit: Divider
        mains: { volts: 230 V, frequency: 50 Hz, tolerance: 0 % }
        parts:
          R1: 3k 10% A -> M
          R2: 1k 10% M -> GND
          D1: zener 12V GND -> A
          R3: 100k A -> GND
        """;

    private static readonly Circuit Nominal = Circuit.From(SheetReader.Read(Divider).Value!).Value!;

    private static double Ohms(Circuit circuit) =>
        new Worlds(circuit)
            .Ask(Setup.Cold, [Array.Empty<Fault>()], [new Probe("R2", "M", NetTable.Ground, ProbeKind.Ohm)], MeterClass.Handheld)[
                0
            ][0]
            .Value;

    private static double[] Moved(string part, double by) =>
        [.. Nominal.Parameters.Select(p => p.Part == part && p.What == "value" ? by : 0)];

    [Fact]
    public void Unmoved_it_is_the_drawing() => Assert.Equal(Ohms(Nominal), Ohms(Nominal.Specimen(Moved("none", 0))), 9);

    [Fact]
    public void A_resistor_two_sigmas_up_reads_its_tolerance_up()
    {
        // 10 % are two standard deviations: R2 is 1k x e^0.1, in parallel with R1 and R3.
        var r2 = 1000 * Math.Exp(0.1);
        var around = 3000 + 100_000;
        Assert.Equal(r2 * around / (r2 + around), Ohms(Nominal.Specimen(Moved("R2", 2))), 1.0);
        Assert.Equal(1000.0 * around / (1000 + around), Ohms(Nominal), 1.0);
    }

    [Fact]
    public void The_nominal_circuit_stays_as_it_was()
    {
        var before = Ohms(Nominal);
        Nominal.Specimen(Moved("R2", -2));
        Assert.Equal(before, Ohms(Nominal), 9);
    }

    private const string Supply = """
        sheet: 1
        unit: Supply
        mains: { volts: 230 V, frequency: 50 Hz, tolerance: 0 % }
        parts:
          F1: fuse 500mA MAINS.L -> T1.1
          W1: wire MAINS.N -> T1.2
          T1: { is: transformer 20 VA, windings: { P: { pins: 1-2, volts: 230 V, ohms: 16 }, S: { pins: 3-4, volts: 20 V, amps: 500 mA, ohms: 2 } } }
          W2: wire T1.4 -> GND
          D1: 1N4002 T1.3 -> RAW
          C1: 1000u 50V RAW -> GND
          R1: 1k RAW -> GND
        """;

    private static Answer Raw(Circuit circuit, ProbeKind kind, params Fault[] faults) =>
        new Worlds(circuit).Ask(
            Setup.Default,
            [faults],
            [kind == ProbeKind.Dc ? new("RAW", "RAW", NetTable.Ground, kind) : new("T1.3", "T1.3", NetTable.Ground, kind)],
            MeterClass.Handheld
        )[0][0];

    /// <summary>Turns are a ratio: two sigmas (3 %) more of them make 3 % more volts of what is there, and nothing out of nothing.</summary>
    [Fact]
    public void A_secondary_with_more_turns_gives_more_volts_only_where_something_feeds_the_core()
    {
        var circuit = Circuit.From(SheetReader.Read(Supply).Value!).Value!;
        var turns = circuit.Parameters.Select((p, i) => (p, i)).Single(x => x.p.What == "volts of S").i;
        var more = circuit.Specimen([.. circuit.Parameters.Select((_, p) => p == turns ? 2.0 : 0)]);
        var (nominal, moved) = (Raw(circuit, ProbeKind.Dc), Raw(more, ProbeKind.Dc));
        Assert.InRange(moved.Value / nominal.Value, 1.025, 1.036);
        Assert.InRange(nominal.Spread[turns] / ((moved.Value - nominal.Value) / 2), 0.9, 1.1);
        Assert.InRange(Raw(more, ProbeKind.Ac).Value / Raw(circuit, ProbeKind.Ac).Value, 1.025, 1.036);

        Fault open = new("W1", "", FailureMode.Open);
        Assert.InRange(Raw(more, ProbeKind.Dc, open).Value, -1e-3, 1e-3);
        Assert.InRange(Raw(more, ProbeKind.Ac, open).Value, 0, 1e-3);
        Assert.InRange(Math.Abs(Raw(circuit, ProbeKind.Dc, open).Spread[turns]), 0, 1e-3);
        Assert.InRange(Math.Abs(Raw(circuit, ProbeKind.Ac, open).Spread[turns]), 0, 1e-3);
    }
}
