using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.Circuits;
using Xunit;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>
/// Bad contacts, gas, wrong values, transistors the wrong way round, broken insulation, dried electrolytics and junctions that leak, against the
/// reference solver: every net's mean and ripple.
/// </summary>
public sealed class FaultAgreementTests
{
    private static readonly SheetOnBench Bench = HighTension.Of(
        260,
        """
          V1: EL84
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
          V2: 12AX7
          R4: 100k HT -> V2.6
          R5: 1k5 V2.8 -> GND
          R6: 1M V2.7 -> GND
          R12: 10k HT -> HALF
          R13: 10k HALF -> GND
          C2: 4u7 350V HALF -> GND
          R8: 22k 5W HT -> LOW
          D9: zener 24V 5W GND -> LOW
          VR1: trimmer 10k lin SET top=LOW wiper=B bottom=GND
          Q1: 2N3904 c=C b=B e=E
          R9: 4k7 LOW -> C
          R10: 2k2 E -> GND
        """
    );

    private static readonly string[] Rectifier =
    [
        "D1 fitted backwards",
        "D2 fitted backwards",
        "D3 fitted backwards",
        "D4 fitted backwards",
        "C1 fitted backwards",
    ];

    /// <summary>Those that this bed adds to what other tests hold, less the ones that blow every fuse: there nothing is left to compare.</summary>
    public static TheoryData<string> Wrong() =>
        [
            "",
            .. Bench
                .Circuit.Faults.Where(f =>
                    f.Mode
                        is FailureMode.BadContact
                            or FailureMode.Gassy
                            or FailureMode.WrongValue
                            or FailureMode.Backwards
                            or FailureMode.DriedOut
                    || (f.Mode == FailureMode.Leaky && f.Part is "Q1" or "V1" or "V2" or "T1" or "T2")
                    || (f.Mode == FailureMode.Open && f.Part is "V1" or "V2" && f.Where != "heater")
                )
                .Where(f => !f.Part.StartsWith('W') || f.Part == "W14")
                .Where(f => f.Mode != FailureMode.WrongValue || f.Part == "R4")
                // Without its reservoir the bed does not come to rest in the reference.
                .Where(f => f is not { Part: "C1", Mode: FailureMode.DriedOut })
                .DistinctBy(f => (f.Part, f.Where, f.Mode))
                .Select(f => f.ToString())
                .Where(f => !Rectifier.Contains(f)),
        ];

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Agrees(string wrong)
    {
        var cancel = TestContext.Current.CancellationToken;
        IReadOnlyList<Fault> faults = wrong.Length == 0 ? [] : [Bench.Circuit.Faults.First(f => f.ToString() == wrong)];
        var loose = LooseNets.Of(Bench.Sheet);
        var nets = Bench
            .Sheet.Nets.Names.Where(n => n != NetTable.Ground && n != NetTable.Neutral && !loose.Contains(n))
            .ToList();
        var probes = nets.SelectMany(n => new[] { Probe(n, ProbeKind.Dc), Probe(n, ProbeKind.Ac) }).ToList();
        var answers = Bench.Worlds.Ask(
            Setup.Default,
            [faults],
            probes,
            MeterClass.Handheld with
            {
                InputOhms = 1e15,
            },
            cancel: cancel
        )[0];
        var reference = new SteadyState(
            new ReferenceCircuit(Bench.Sheet, Setup.Default, faults, new Dictionary<string, double>())
        );
        double Figure(string net, int kind) => answers[(2 * nets.IndexOf(net)) + kind].Value;
        var means = nets.Where(n => answers[2 * nets.IndexOf(n)].HasValue).ToDictionary(n => n, n => Figure(n, 0));
        Assert.NotEmpty(means);
        Assert.True(reference.SettleFrom(means, n => means.ContainsKey(n) ? Figure(n, 1) : 0), reference.Restless);
        foreach (var net in means.Keys.Where(reference.Figures.ContainsKey))
        {
            var (mean, ripple) = (reference.Figures[net].Mean, reference.Figures[net].Ripple);
            Assert.Equal(mean, Figure(net, 0), (0.005 * Math.Abs(mean)) + 0.003 + (0.003 * ripple));
            Assert.Equal(ripple, Figure(net, 1), (0.03 * ripple) + 0.003);
        }
    }

    private static Probe Probe(string net, ProbeKind kind) =>
        new(net, net, NetTable.Ground, kind, SaidAsRipple: kind == ProbeKind.Ac);
}
