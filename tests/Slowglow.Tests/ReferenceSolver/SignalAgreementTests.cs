using Slowglow.Circuits;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Setups;
using Xunit;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>Response and distortion against the reference's small-signal analysis and the Fourier figures of its transient.</summary>
public sealed class SignalAgreementTests(ITestOutputHelper output)
{
    private const double Decibels = 0.1;

    /// <summary>Below this a path is broken, and what is left is leakage, volts.</summary>
    private const double Silence = 1e-6;

    /// <summary>Long enough for the slowest bias to come to rest.</summary>
    private const int Cycles = 150;

    [Theory]
    [InlineData("push-pull-cathode-bias", 1, 3)]
    [InlineData("single-ended", 2, 3)]
    [InlineData("transistor-power", 3, 3)]
    [InlineData("op-amp-preamp", 4, 3)]
    [InlineData("hybrid", 5, 0)]
    [InlineData("small-signal", 6, 3)]
    [InlineData("tape-replay", 7, 3)]
    [InlineData("diode-clipper", 8, 3)]
    public void Response_agrees_within_a_tenth_of_a_decibel(string name, int seed, int faultsOf)
    {
        var cancel = TestContext.Current.CancellationToken;
        var worlds = new Worlds(Circuit.From(CircuitFiles.Read(name)).Value!);
        foreach (var faults in Sets(worlds.Circuit, seed, faultsOf))
        {
            var world = faults.Count == 0 ? "healthy" : faults[0].ToString();
            var ours = worlds.World(Setup.Default, faults, cancel).Response(SignalBench.Frequencies)!.Points;
            var theirs = new SignalBench(worlds, faults, cancel).Response();
            var worst = ours.Zip(theirs)
                .Where(p => p.Second > Silence || p.First.Volts > Silence)
                .Select(p => Math.Abs(20 * Math.Log10(p.First.Volts / p.Second)))
                .DefaultIfEmpty(0)
                .Max();
            output.WriteLine($"{name}: {world}: worst {worst:F4} dB");
            Assert.True(worst <= Decibels, $"{world}: {worst:F3} dB apart");
        }
    }

    /// <summary>The healthy world, and some in which a resistor or capacitor has drifted or dried out.</summary>
    private static IEnumerable<IReadOnlyList<Fault>> Sets(Circuit circuit, int seed, int count)
    {
        var small = circuit.Sheet.Parts.Where(p => p is ResistorPart || p is CapacitorPart).Select(p => p.Designator).ToHashSet();
        var soft = circuit
            .Faults.Where(f => small.Contains(f.Part) && f.Mode is FailureMode.Drifted or FailureMode.DriedOut)
            .ToArray();
        new Random(seed).Shuffle(soft);
        return
        [
            [],
            .. soft.Take(count).Select(f => new[] { f }),
        ];
    }

    [Theory]
    [InlineData("single-ended")]
    [InlineData("push-pull-cathode-bias")]
    [InlineData("small-signal")]
    [InlineData("op-amp-preamp")]
    [InlineData("diode-clipper")]
    public void Distortion_agrees_within_a_tenth(string name)
    {
        var cancel = TestContext.Current.CancellationToken;
        var worlds = new Worlds(Circuit.From(CircuitFiles.Read(name)).Value!);
        var volts = worlds.CleanLimit(Setup.Default, []).GeneratorVolts;
        var ours = worlds.World(Setup.Default, [], cancel).Harmonics([volts], cancel: cancel)[0]!;
        var theirs = new SignalBench(worlds, [], cancel).Harmonics(volts, Cycles);
        var distortion = Math.Sqrt(theirs.Skip(1).Sum(h => h * h)) / theirs[0];
        output.WriteLine(
            $"{name} at {volts:G4} V: {ours.OutputVolts:G5} V against {theirs[0]:G5} V, {ours.Distortion:P3} against {distortion:P3}; "
                + string.Join(", ", ours.Harmonics.Zip(theirs.Skip(1), (o, t) => $"{o:P3} ({t / theirs[0]:P3})"))
        );
        Assert.Equal(theirs[0], ours.OutputVolts, 0.01 * theirs[0]);
        Assert.InRange(distortion, 0.02, 0.2);
        Assert.Equal(distortion, ours.Distortion, 0.1 * distortion);
        foreach (var (mine, other) in ours.Harmonics.Zip(theirs.Skip(1), (o, t) => (o, t / theirs[0])).Where(h => h.Item2 > 0.01))
        {
            Assert.Equal(other, mine, 0.1 * other);
        }
    }
}
