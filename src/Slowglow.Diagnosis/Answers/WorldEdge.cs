using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Diode;
using Slowglow.Sheets.Parts.OpAmp;
using Slowglow.Sheets.Parts.Transistor;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Answers;

/// <summary>
/// Worlds that stand on an edge, so that real units are to be found on either side of it and not where the nominal one stands. A junction that conducts holds
/// its volts to within some hundredths, whatever the unit: where its tolerances would move it by more, as in an output stage with one half dead, the straight
/// line does not hold. An op-amp that lost its feedback lies against the supply that its own offset chose.
/// </summary>
internal sealed class WorldEdge
{
    /// <summary>Volts across a junction that conducts, and how many of spread it cannot have. Judgement.</summary>
    private const double LeastVolts = 0.4;
    private const double MostVolts = 0.9;
    private const double MostSpread = 0.15;

    /// <summary>Volts between the inputs that an offset can turn round, and from the supply at which an output lies against it. Judgement.</summary>
    private const double MostOffset = 0.01;
    private const double NearSupply = 3.5;
    private const double LeastSupply = 4;

    private readonly IReadOnlyList<Probe> probes;
    private readonly HashSet<(string, string)> junctions;
    private readonly Dictionary<string, int> nets = [];
    private readonly (string Plus, string Minus, string Out, string High, string Low)[] amplifiers;

    public WorldEdge(Sheet sheet, IReadOnlyList<Probe> probes)
    {
        this.probes = probes;
        junctions = [.. sheet.Parts.SelectMany(Junctions)];
        amplifiers = [.. sheet.Parts.OfType<OpAmpPart>().SelectMany(Amplifiers)];
        for (var p = 0; p < probes.Count; p++)
        {
            if (probes[p] is { Kind: ProbeKind.Dc, Black: NetTable.Ground } probe)
            {
                nets.TryAdd(probe.Red, p);
            }
        }
    }

    /// <summary>Whether the answers of a powered world, one to each probe, show that it stands on an edge.</summary>
    public bool IsOnEdge(IReadOnlyList<Answer> answers) =>
        Enumerable.Range(0, probes.Count).Any(p => IsTooFar(probes[p], answers[p])) || amplifiers.Any(a => IsLost(a, answers));

    private bool IsTooFar(Probe probe, Answer answer) =>
        probe.Kind == ProbeKind.Dc
        && answer.HasValue
        && Math.Abs(answer.Value) is > LeastVolts and < MostVolts
        && answer.Sigma > MostSpread
        && (junctions.Contains((probe.Red, probe.Black)) || junctions.Contains((probe.Black, probe.Red)));

    private bool IsLost((string Plus, string Minus, string Out, string High, string Low) amplifier, IReadOnlyList<Answer> answers)
    {
        double Volts(string net) =>
            net == NetTable.Ground ? 0
            : nets.TryGetValue(net, out var p) && answers[p].HasValue ? answers[p].Value
            : double.NaN;

        var (high, low, output) = (Volts(amplifier.High), Volts(amplifier.Low), Volts(amplifier.Out));
        return high - low > LeastSupply
            && Math.Min(high - output, output - low) < NearSupply
            && Math.Abs(Volts(amplifier.Plus) - Volts(amplifier.Minus)) < MostOffset;
    }

    private static IEnumerable<(string, string)> Junctions(Part part) =>
        part switch
        {
            DiodePart { Device.Kind: DeviceKind.Diode } => [(part.Pins[0].Net, part.Pins[1].Net)],
            TransistorPart { Device.Kind: DeviceKind.Bjt } => [(part.NetOf("b")!, part.NetOf("e")!)],
            _ => [],
        };

    private static IEnumerable<(string, string, string, string, string)> Amplifiers(OpAmpPart part)
    {
        foreach (var section in new[] { "1", "2", "3", "4" })
        {
            if (
                part.NetOf("in+" + section) is { } plus
                && part.NetOf("in-" + section) is { } minus
                && part.NetOf("out" + section) is { } output
                && part.NetOf("v+") is { } high
                && part.NetOf("v-") is { } low
            )
            {
                yield return (plus, minus, output, high, low);
            }
        }
    }
}
