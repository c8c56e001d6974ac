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

    /// <summary>A JFET without power is a resistance of 1 / (2 beta |vto|), which differs from one to the next as its beta and cut-off do.</summary>
    [Fact]
    public void The_channel_of_a_jfet_is_as_uncertain_as_its_cut_off()
    {
        var circuit = Circuit
            .From(SheetReader.Read(File.ReadAllText(Path.Combine(Repository.Root, "demo/sheets/dunlin-pm1.yaml"))).Value!)
            .Value!;
        var part = circuit.Sheet.Parts.OfType<TransistorPart>().First(t => t.Designator == "Q5");
        Probe[] probe = [new("Q5", part.NetOf("d")!, part.NetOf("s")!, ProbeKind.Ohm)];
        var answer = Cold(circuit, [], probe)[0];
        foreach (var what in new[] { "beta", "vto" })
        {
            var index = circuit.Parameters.Select((p, i) => (p, i)).First(x => x.p.Part == "Q5" && x.p.What == what).i;
            double[] deviations = [.. circuit.Parameters.Select((_, i) => i == index ? 0.05 : 0)];
            var real = (Cold(circuit.Specimen(deviations), [], probe)[0].Value - answer.Value) / 0.05;
            Assert.True(Math.Abs(real) > 0.05 * answer.Value);
            Assert.InRange(answer.Spread[index] / real, 0.9, 1.1);
        }
    }

    /// <summary>
    /// With a rail's fuse out nothing but junctions loads it: its megohms go with their saturation currents, by way of the current that the meter sends too.
    /// Moved a little, for such a reading soon leaves its tangent.
    /// </summary>
    [Fact]
    public void Megohms_through_junctions_move_as_they_do_when_the_junctions_are_really_moved()
    {
        const double Moved = 0.05;
        var circuit = Circuit
            .From(SheetReader.Read(File.ReadAllText(Path.Combine(Repository.Root, "demo/heronsgate-m60/sheet.yaml"))).Value!)
            .Value!;
        Fault[] open = [new("F2", "", FailureMode.Open)];
        Probe[] probes =
        [
            .. new[] { "C3", "C5", "C9" }
                .Select(c => circuit.Sheet.Parts.First(p => p.Designator == c))
                .Select(c => new Probe(c.Designator, c.Pins[0].Net, c.Pins[1].Net, ProbeKind.Ohm)),
        ];
        var answers = Cold(circuit, open, probes);
        Assert.All(answers, a => Assert.InRange(a.Value, 1e6, 40e6));
        var isOf = circuit.Parameters.Select((p, i) => (p, i)).Where(x => x.p.What == "is").Select(x => x.i).ToArray();
        foreach (var index in isOf)
        {
            double[] deviations = [.. circuit.Parameters.Select((_, i) => i == index ? Moved : 0)];
            var moved = Cold(circuit.Specimen(deviations), open, probes);
            for (var p = 0; p < probes.Length; p++)
            {
                var real = (moved[p].Value - answers[p].Value) / Moved / answers[p].Value;
                var foretold = answers[p].Spread[index] / answers[p].Value;
                Assert.True(
                    Math.Abs(foretold - real) < 0.01 + (0.2 * Math.Abs(real)),
                    $"{probes[p].Where} by {circuit.Parameters[index].Part}: {foretold:P1} foretold, {real:P1} when moved"
                );
            }
        }

        // One diode across the output carries most of it: by 30 % from specimen to specimen.
        Assert.All(answers, a => Assert.InRange(a.Sigma / a.Value, 0.15, 0.5));
    }

    private static Answer[] Cold(Circuit circuit, IReadOnlyList<Fault> faults, Probe[] probes) =>
        new Worlds(circuit).Ask(Setup.Cold, [faults], probes, MeterClass.Handheld, null, TestContext.Current.CancellationToken)[
            0
        ];

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
