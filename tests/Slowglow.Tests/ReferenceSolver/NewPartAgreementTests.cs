using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.Circuits;
using Xunit;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>
/// A single-ended amplifier with its heaters in a chain, an ultra-linear output transformer and an op-amp that is asked for too much,
/// against the reference solver: every net's mean and ripple, healthy and with the faults of those parts.
/// </summary>
public sealed class NewPartAgreementTests
{
    private static readonly SheetOnBench Bench = HighTension.Of(
        260,
        """
          V1: EL84 4=H1 5=H2
          V2: EL84 4=H2 5=GND
          R1: 12 10W HS -> H1
          T3:
            is: transformer 60 VA
            windings:
              P: { pins: 1-2, volts: 230 V, ohms: 20 }
              LT: { pins: 3-4, volts: 15 V, ohms: 0.3 }
          W10: wire MAINS.L -> T3.1
          W11: wire MAINS.N -> T3.2
          W12: wire T3.3 -> HS
          W13: wire T3.4 -> GND
          T2:
            is: output transformer 5k:8 8 W
            windings:
              P: { pins: 1-2-3, taps: 40 % }
              S: { pins: 4-5 }
          W14: wire T2.1 -> V1.a
          W15: wire T2.2 -> V1.g2
          W16: wire T2.3 -> HT
          W17: wire T2.4 -> GND
          LS1: speaker 8 ohm T2.5 -> GND
          R2: 470k V1.g -> GND
          R3: 150 V1.k -> GND
          R4: 100k HT -> V2.a
          W18: wire V2.a -> V2.g2
          R5: 1k V2.k -> GND
          R6: 470k V2.g -> GND
          R7: 22k 5W HT -> LOW
          D9: zener 12V 5W GND -> LOW
          U1: TL072 8=LOW 4=GND 3=MID 2=O 1=O
          R8: 10k LOW -> MID
          R9: 10k MID -> GND
          R10: 1k O -> GND
        """
    );

    /// <summary>Without the open primary: the reference's Newton does not start where nothing holds an anode.</summary>
    public static TheoryData<string> Wrong() =>
        [
            "",
            .. Bench
                .Circuit.Faults.Where(f =>
                    f.Part is "T2" or "T3" || (f.Part is "V1" or "V2" && (f.Where.Contains('h', StringComparison.Ordinal)))
                )
                .Where(f => f is not { Part: "T2", Where: "P", Mode: FailureMode.Open })
                .Select(f => f.ToString())
                // Contacts and insulation are held to the reference by FaultAgreementTests, on a bed that comes to rest with them.
                .Where(f => !f.Contains("pin", StringComparison.Ordinal) && !f.Contains("core", StringComparison.Ordinal)),
        ];

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Agrees(string wrong)
    {
        var cancel = TestContext.Current.CancellationToken;
        IReadOnlyList<Fault> faults = wrong.Length == 0 ? [] : [Bench.Circuit.Faults.First(f => f.ToString() == wrong)];
        var loose = LooseNets.Of(Bench.Sheet);
        var nets = Bench.Sheet.Nets.Names.Where(n => n != NetTable.Ground && !loose.Contains(n)).ToList();
        var probes = nets.SelectMany(n => new[] { Probe(n, ProbeKind.Dc), Probe(n, ProbeKind.Ac) }).ToList();
        var meter = MeterClass.Handheld with { InputOhms = 1e15 };
        var answers = Bench.Worlds.Ask(Setup.Default, [faults], probes, meter, cancel: cancel)[0];
        var warmth = HeaterWarmth.Of(Bench.Worlds, [faults], cancel)[0];

        // An unloaded reservoir is charged in pulses of a few time steps: fine enough that the reference knows them better than we do.
        var reference = new SteadyState(new ReferenceCircuit(Bench.Sheet, Setup.Default, faults, warmth), steps: 300);
        double Figure(string net, int kind) => answers[(2 * nets.IndexOf(net)) + kind].Value;
        var means = nets.Where(n => answers[2 * nets.IndexOf(n)].HasValue).ToDictionary(n => n, n => Figure(n, 0));
        Assert.True(reference.SettleFrom(means, n => means.ContainsKey(n) ? Figure(n, 1) : 0), reference.Restless);
        foreach (var net in means.Keys.Where(reference.Figures.ContainsKey))
        {
            var (mean, ripple) = (reference.Figures[net].Mean, reference.Figures[net].Ripple);
            Near(net, mean, Figure(net, 0), (0.005 * Math.Abs(mean)) + 0.003 + (0.003 * ripple));
            Near(net + " ripple", ripple, Figure(net, 1), (0.03 * ripple) + 0.003);
        }
    }

    private static void Near(string what, double theirs, double ours, double allowed) =>
        Assert.True(
            Math.Abs(theirs - ours) <= allowed,
            FormattableString.Invariant($"{what}: {ours:G6} V against {theirs:G6} V, {allowed:G3} V allowed")
        );

    private static Probe Probe(string net, ProbeKind kind) =>
        new(net, net, NetTable.Ground, kind, SaidAsRipple: kind == ProbeKind.Ac);
}
