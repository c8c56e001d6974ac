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
}
