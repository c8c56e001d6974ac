using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.Drawing;
using Xunit;

namespace Slowglow.Tests.Circuits.Solved;

/// <summary>Every sheet of the demo and every textbook circuit is at rest somewhere when healthy.</summary>
public sealed class HealthySheetsTests
{
    [Theory]
    [MemberData(nameof(DrawnSheets.Names), MemberType = typeof(DrawnSheets))]
    public void A_healthy_unit_settles_and_every_net_with_a_figure_has_one(string name)
    {
        var circuit = Circuit.From(DrawnSheets.Sheet(name)).Value!;
        Probe[] probes =
        [
            .. circuit
                .Sheet.Nets.Names.Where(n => n != NetTable.Ground)
                .Select(n => new Probe(n, n, NetTable.Ground, ProbeKind.Dc)),
        ];

        var answers = new Worlds(circuit).Ask(
            Setup.Default,
            [
                [],
            ],
            probes,
            MeterClass.Handheld,
            cancel: TestContext.Current.CancellationToken
        )[0];

        Assert.DoesNotContain(answers, a => a.Kind == AnswerKind.Unsettled);
        Assert.Contains(answers, a => a.HasValue && Math.Abs(a.Value) > 1);
    }

    /// <summary>With both op-amp supplies dead nothing makes volts: neither an output stage without rails nor its change-over nor a regulator without input.</summary>
    [Theory]
    [InlineData("merganser-vx2")]
    [InlineData("saltmarsh-lm2")]
    [InlineData("bittern-ps2")]
    [InlineData("dunlin-pm1")]
    public void A_unit_whose_mains_fuse_is_open_holds_no_volts(string name)
    {
        var circuit = Circuit.From(DrawnSheets.Sheet(name)).Value!;
        Probe[] probes =
        [
            .. circuit
                .Sheet.Nets.Names.Where(n => n != NetTable.Ground && !n.StartsWith("MAINS", StringComparison.Ordinal))
                .Select(Dc),
        ];
        var answers = new Worlds(circuit).Ask(
            Setup.Default,
            [
                [new Fault("F1", "", FailureMode.Open)],
            ],
            probes,
            MeterClass.Handheld,
            cancel: TestContext.Current.CancellationToken
        )[0];

        Assert.All(
            probes.Zip(answers).Where(a => a.Second.HasValue),
            a => Assert.True(Math.Abs(a.Second.Value) < 0.02, $"{a.First.Where} {a.Second.Value} V")
        );
    }

    /// <summary>
    /// Bias current of the NE5532, 200 nA typical into the input of its npn pair (data sheet, from memory), through R1; the other half of the package is on no
    /// net of the sheet, and takes its standing current all the same.
    /// </summary>
    [Fact]
    public void A_half_that_nobody_has_wired_leaves_the_other_alone()
    {
        var circuit = Circuit.From(DrawnSheets.Sheet("non-inverting-op-amp")).Value!;
        Probe[] probes = [Dc("U3.3"), Dc("P12"), Dc("N12")];
        var answers = new Worlds(circuit).Ask(
            Setup.Default,
            [
                [],
            ],
            probes,
            MeterClass.Handheld,
            cancel: TestContext.Current.CancellationToken
        )[0];

        Assert.InRange(answers[0].Value, -0.021, -0.019);
        Assert.InRange(answers[1].Value, 11.5, 12.5);
        Assert.InRange(answers[2].Value, -12.5, -11.5);
        Assert.DoesNotContain(circuit.Faults, f => f.Part == "U3" && f.Where == "2");
        Assert.Contains(circuit.Faults, f => f is { Part: "U3", Where: "1", Mode: FailureMode.StuckHigh });
    }

    private static Probe Dc(string net) => new(net, net, NetTable.Ground, ProbeKind.Dc);
}
