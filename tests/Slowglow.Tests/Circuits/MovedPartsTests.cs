using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.House;

namespace Slowglow.Tests.Circuits;

/// <summary>
/// The slow and obvious check of what levels and inlet currents are said to spread by: the same unit with each part really moved, bias and all. An output
/// stage's standing current goes with its trimmer by powers of e, and takes the inlet's and the levels inside its loop along.
/// </summary>
public class MovedPartsTests
{
    private const double Moved = 0.05;

    /// <summary>Turns of a secondary stand as a source in the equations, which the primary does not feel.</summary>
    private const string Turns = "volts of ";

    [Theory]
    [InlineData("demo/sheets/wheatear-p40.yaml", "MAINS", "B7 1kHz", "K1 1kHz", "MID 1kHz")]
    [InlineData("demo/kittiwake-15/sheet.yaml", "MAINS", "G5 1kHz", "V4.9 1kHz", "V4.7 1kHz")]
    [InlineData("demo/sheets/dunlin-pm1.yaml", "B4 1kHz", "DT 1kHz", "E4 1kHz")]
    public void Levels_and_inlet_move_as_they_do_when_the_parts_are_really_moved(string file, params string[] asked)
    {
        var circuit = Circuit.From(SheetReader.Read(File.ReadAllText(Path.Combine(Repository.Root, file))).Value!).Value!;
        Probe[] probes = [.. asked.Select(a => ReadingsReader.ReadProbe(a, circuit.Sheet).Value!)];
        var answers = Ask(circuit, probes);
        var parameters = Enumerable.Range(0, circuit.Parameters.Count).Where(i => !circuit.Parameters[i].What.StartsWith(Turns));

        // What counts most for each of them, and some of the rest.
        var telling = answers.SelectMany(a => parameters.OrderByDescending(i => Math.Abs(a.Spread[i])).Take(6));
        foreach (var i in telling.Concat(parameters.Where(i => i % 23 == 0)).Distinct())
        {
            var up = Ask(circuit.Specimen(Only(circuit, i, Moved)), probes);
            var down = Ask(circuit.Specimen(Only(circuit, i, -Moved)), probes);
            for (var p = 0; p < probes.Length; p++)
            {
                var real = (up[p].Value - down[p].Value) / (2 * Moved) / answers[p].Value;
                var foretold = answers[p].Spread[i] / answers[p].Value;
                Assert.True(
                    Math.Abs(foretold - real) < 0.001 + (0.02 * Math.Abs(real)),
                    $"{asked[p]} by {circuit.Parameters[i].Part} {circuit.Parameters[i].What}: {foretold:P2} foretold, {real:P2} when moved"
                );
            }
        }
    }

    [Fact]
    public void An_inlet_current_goes_with_the_standing_current_that_a_trimmer_sets()
    {
        var circuit = Circuit
            .From(SheetReader.Read(File.ReadAllText(Path.Combine(Repository.Root, "demo/sheets/wheatear-p40.yaml"))).Value!)
            .Value!;
        var setting = circuit.Parameters.Select((p, i) => (p, i)).Single(x => x.p.Part == "VR2" && x.p.What == "setting").i;
        var inlet = Ask(circuit, [ReadingsReader.ReadProbe("MAINS", circuit.Sheet).Value!])[0];

        // The trimmer's 1k over R12's 620 times a junction's 0.65 V: a turn is worth a volt of the spreader's 1.9. An eighth of a turn, one standard deviation,
        // moves three junctions by 40 mV each, which would be some five times the current if no resistor were in its way.
        Assert.InRange(Math.Abs(inlet.Spread[setting]) / inlet.Value, 0.3, 1.5);
    }

    private static double[] Only(Circuit circuit, int parameter, double by) =>
        [.. circuit.Parameters.Select((_, i) => i == parameter ? by : 0)];

    private static Answer[] Ask(Circuit circuit, Probe[] probes) =>
        new Worlds(circuit).Ask(
            Setup.Default,
            [Array.Empty<Fault>()],
            probes,
            MeterClass.Handheld,
            null,
            TestContext.Current.CancellationToken
        )[0];
}
