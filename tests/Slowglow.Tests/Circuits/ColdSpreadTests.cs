using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.House;

namespace Slowglow.Tests.Circuits;

/// <summary>Ohms with the power off, where a mistake would mislead: a winding with the plug out, and a path through a junction.</summary>
public class ColdSpreadTests
{
    private const string Supply = """
        sheet: 1
        unit: Supply
        mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
        parts:
          F1: fuse 500mA MAINS.L -> T1.1
          W1: wire MAINS.N -> T1.2
          T1: { is: transformer 20 VA, windings: { P: { pins: 1-2, volts: 230 V, ohms: 16 }, S: { pins: 3-4, volts: 20 V, amps: 500 mA, ohms: 2 } } }
          W2: wire T1.4 -> GND
          D1: 1N4002 T1.3 -> RAW
          C1: 1000u 50V RAW -> GND
          R1: 2M2 RAW -> GND
        """;

    private static Answer Ask(string red, string black, ProbeKind kind, params Fault[] faults)
    {
        var circuit = Circuit.From(SheetReader.Read(Supply).Value!).Value!;
        var nets = circuit.Sheet.Nets;
        var probe = new Probe("point", nets.Find(red)!, nets.Find(black)!, kind);
        return new Worlds(circuit).Ask(
            Setup.Cold,
            [faults],
            [probe],
            MeterClass.Handheld,
            null,
            TestContext.Current.CancellationToken
        )[0][0];
    }

    [Fact]
    public void A_primary_reads_its_copper_with_the_plug_out() => Assert.Equal(16, Ask("T1.1", "T1.2", ProbeKind.Ohm).Value, 0.1);

    [Fact]
    public void An_open_primary_reads_overload() =>
        Assert.Equal(AnswerKind.Overload, Ask("T1.1", "T1.2", ProbeKind.Ohm, new Fault("T1", "P", FailureMode.Open)).Kind);

    [Fact]
    public void Ohms_through_a_junction_are_uncertain_by_its_saturation_current()
    {
        // Between RAW and the winding a meter sees the junction in parallel with 2M2. The reading moves with the saturation current (30 % from
        // specimen to specimen) by the junction's share of the current, and with the resistor (half of 5 %) by the rest.
        var answer = Ask("RAW", "T1.3", ProbeKind.Ohm);
        var share = 1 - (answer.Value / 2.2e6);
        var expected = Math.Sqrt(Math.Pow(0.3 * share, 2) + Math.Pow(0.025 * (1 - share), 2));
        Assert.InRange(answer.Sigma / answer.Value, 0.8 * expected, 1.2 * expected);
        Assert.True(answer.Sigma / answer.Value > 0.025 * (1 - share));
    }

    [Fact]
    public void A_junction_turned_on_moves_by_millivolts_only()
    {
        // 30 % of saturation current are n Vt ln 1.3: 13 mV at an ideality of 1.9.
        var answer = Ask("T1.3", "RAW", ProbeKind.Diode);
        Assert.InRange(answer.Sigma, 0.005, 0.03);
    }

    /// <summary>The slow and obvious check: the same unit with each parameter really moved. Between other junctions a diode test moves by little.</summary>
    [Theory]
    [InlineData("demo/sheets/merganser-vx2.yaml")]
    [InlineData("demo/heronsgate-m60/sheet.yaml")]
    public void A_diode_test_moves_as_it_does_when_the_junctions_are_really_moved(string file)
    {
        var circuit = Circuit.From(SheetReader.Read(File.ReadAllText(Path.Combine(Repository.Root, file))).Value!).Value!;
        Probe[] probes = [.. circuit.Sheet.Parts.Where(IsJunction).Select(p => Across(p))];
        var answers = Diode(circuit, probes);
        var isOf = circuit.Parameters.Select((p, i) => (p, i)).Where(x => x.p.What == "is").Select(x => x.i).ToArray();
        Assert.True(isOf.Length >= 5);
        foreach (var index in isOf)
        {
            double[] deviations = [.. circuit.Parameters.Select((_, i) => i == index ? 0.5 : 0)];
            var moved = Diode(circuit.Specimen(deviations), probes);
            for (var p = 0; p < probes.Length; p++)
            {
                if (answers[p].HasValue && moved[p].HasValue)
                {
                    var real = (moved[p].Value - answers[p].Value) / 0.5;
                    Assert.True(
                        Math.Abs(answers[p].Spread[index] - real) < 0.003 + (0.35 * Math.Abs(real)),
                        $"{probes[p].Where} by {circuit.Parameters[index].Part}: {answers[p].Spread[index]:G4} V foretold, {real:G4} V when moved"
                    );
                }
            }
        }
    }

    private static bool IsJunction(Part part) => part is DiodePart or TransistorPart { Device.Kind: DeviceKind.Bjt };

    private static Probe Across(Part part) =>
        part is DiodePart
            ? new(part.Designator, part.Pins[0].Net, part.Pins[1].Net, ProbeKind.Diode)
            : new(part.Designator, part.NetOf("b")!, part.NetOf("e")!, ProbeKind.Diode);

    private static Answer[] Diode(Circuit circuit, Probe[] probes) =>
        new Worlds(circuit).Ask(
            Setup.Cold,
            [
                [],
            ],
            probes,
            MeterClass.Handheld,
            null,
            TestContext.Current.CancellationToken
        )[0];
}
