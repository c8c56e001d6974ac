using System.Runtime.Intrinsics;
using CsCheck;
using Slowglow.Circuits.Models.Diode;
using Slowglow.Circuits.Models.GasRegulator;
using Slowglow.Circuits.Models.OpAmp;
using Slowglow.Circuits.Models.Optocoupler;
using Slowglow.Circuits.Models.Regulator;
using Slowglow.Circuits.Models.Transistor;
using Slowglow.Circuits.Models.Valve;
using Slowglow.Solving;
using Lane = System.Runtime.Intrinsics.Vector256<double>;

namespace Slowglow.Tests.Circuits;

/// <summary>Every law's slopes are the derivatives of its currents: checked by differences at random voltages.</summary>
public sealed class LawSlopeTests
{
    private static readonly Dictionary<string, (Law Law, double[] Constants, double[] Low, double[] High)> Cases = new()
    {
        ["diode"] = (new DiodeLaw(), [1e-9, 1.8, 0.05, 50, 2, 1e-5, 1], [-55], [1.2]),
        ["triode"] = (new TriodeLaw(), [100, 1.4, 1060, 600, 300, 0.3, 6e-4, 10, 1.3, 1], [-20, -6], [400, 1.5]),
        ["pentode"] = (
            new PentodeLaw(),
            [19, 1.3, 450, 4500, 120, 20, 1.5, 6e-4, 10, 1.3, 0.003, 2, 0.2, 3, 0.3, 1],
            [1, -20, 5],
            [400, 2, 350]
        ),
        ["gassy triode"] = (
            new SocketedTriodeLaw(),
            [100, 1.4, 1060, 600, 300, 0.3, 6e-4, 10, 1.3, 1, 3e-3, 1],
            [-20, -6],
            [400, 1.5]
        ),
        ["gassy pentode"] = (
            new SocketedPentodeLaw(),
            [19, 1.3, 450, 4500, 120, 20, 1.5, 6e-4, 10, 1.3, 0.003, 2, 0.2, 3, 0.3, 1, 3e-3, 1, 1],
            [1, -20, 5],
            [400, 2, 350]
        ),
        ["pentode with its anode off"] = (
            new SocketedPentodeLaw(),
            [19, 1.3, 450, 4500, 120, 20, 1.5, 6e-4, 10, 1.3, 0.003, 2, 0.2, 3, 0.3, 1, 0, 1, 0],
            [1, -20, 5],
            [400, 2, 350]
        ),
        ["pentode with its grid off"] = (
            new SocketedPentodeLaw(),
            [19, 1.3, 450, 4500, 120, 20, 1.5, 6e-4, 10, 1.3, 0.003, 2, 0.2, 3, 0.3, 1, 0, 0, 1],
            [1, -20, 5],
            [400, 2, 350]
        ),
        ["rectifier"] = (new RectifierLaw(), [7.4e-4, 1], [-100], [60]),
        ["npn"] = (new BjtLaw(), [1, 1e-14, 200, 4, 80, 1, 1, 1], [-0.5, -1], [30, 0.75]),
        ["pnp"] = (new BjtLaw(), [-1, 1e-14, 200, 4, 80, 1, 1, 1], [-30, -0.75], [0.5, 1]),
        ["jfet"] = (new FieldEffectLaw(), [1, 1e-3, -2, 0.01, 1e-14, 0, 1], [-15, -4], [20, 0.4]),
        ["mosfet"] = (new FieldEffectLaw(), [-1, 0.5, 3, 0.01, 0, 1e-12, 1], [-30, -8], [0.4, 1]),
        ["op-amp"] = (new OpAmpLaw(), [1e3, 75, 1.5, 1.5, 2e-3, 1e-9, 0, 20, 0, 0.025], [10, 10, 0, 18], [10.02, 10.02, 30, 32]),
        ["op-amp short of supply"] = (
            new OpAmpLaw(),
            [1e3, 75, 0.5, 0.5, 2e-3, 1e-9, 0, 20, 0, 0.025],
            [0.3, 0.3, 0, 1.5],
            [0.302, 0.302, 4, 6]
        ),
        ["gas regulator"] = (new GasRegulatorLaw(), [150, 80, 1], [100], [160]),
        ["optocoupler"] = (new OptocouplerLaw(), [9.2e-18, 2, 6, 5000, 0.01, 0.8, 1e7, 1, 1], [0, -0.2, -5], [1.9, 0, 5]),
        ["regulator"] = (new RegulatorLaw(), [1, 15, 2, 1, 5e-3, 0.05, 1], [17.5, 4], [30, 14.9]),
        ["negative regulator"] = (new RegulatorLaw(), [-1, 15, 2, 1, 5e-3, 0.05, 1], [-30, -14.9], [-17.5, -4]),
    };

    public static TheoryData<string> Names() => [.. Cases.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Slopes_are_derivatives(string name)
    {
        var (law, constants, low, high) = Cases[name];
        Gen.Double[0, 1]
            .Array[law.Ports]
            .Sample(
                at =>
                {
                    var u = at.Select((s, p) => low[p] + (s * (high[p] - low[p]))).ToArray();
                    var (current, slopes) = Evaluate(law, constants, u);
                    for (var q = 0; q < law.Ports; q++)
                    {
                        // Beside a kink of the law (pinch-off, the turn of the channel) a difference straddles it: such points say nothing.
                        const double Step = 1e-6;
                        var up = Evaluate(law, constants, [.. u.Select((v, p) => p == q ? v + Step : v)]).Currents;
                        var down = Evaluate(law, constants, [.. u.Select((v, p) => p == q ? v - Step : v)]).Currents;
                        for (var p = 0; p < law.Ports; p++)
                        {
                            var (forward, backward) = ((up[p] - current[p]) / Step, (current[p] - down[p]) / Step);
                            if (Math.Abs(forward - backward) > 1e-9 + (0.02 * (Math.Abs(forward) + Math.Abs(backward))))
                            {
                                continue;
                            }

                            var wanted = (up[p] - down[p]) / (2 * Step);
                            var allowed = 1e-9 + (2e-3 * Math.Abs(wanted)) + (1e-6 * Math.Abs(current[p]) / Step * 1e-3);
                            Assert.True(
                                Math.Abs(wanted - slopes[(p * law.Ports) + q]) <= allowed,
                                $"{name} [{p},{q}] at {string.Join(' ', u)}: {slopes[(p * law.Ports) + q]} but {wanted}"
                            );
                        }
                    }
                },
                iter: 300,
                threads: 1
            );
    }

    /// <summary>What a lane is told must not hang on its neighbours: a world would then depend on the worlds solved beside it.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Each_lane_is_judged_for_itself(string name)
    {
        var (law, constants, low, high) = Cases[name];
        var c = constants.Select(v => Vector256.Create(v)).ToArray();
        Gen.Select(Gen.Double[-0.5, 1.5].Array[4 * law.Ports], Gen.Double[-1, 1].Array[4 * law.Ports], Gen.Double[-9, 1].Array[4])
            .Sample(
                (at, moves, decades) =>
                {
                    Lane Volts(Func<int, double> of) => Vector256.Create(of(0), of(1), of(2), of(3));
                    double Before(int p, int lane) => low[p] + (at[(p * 4) + lane] * (high[p] - low[p]));
                    double After(int p, int lane) => Before(p, lane) + (moves[(p * 4) + lane] * Math.Pow(10, decades[lane]));
                    Lane[] before = [.. Enumerable.Range(0, law.Ports).Select(p => Volts(lane => Before(p, lane)))];
                    Lane[] after = [.. Enumerable.Range(0, law.Ports).Select(p => Volts(lane => After(p, lane)))];
                    var moved = law.Moved(before, after, c);
                    var (together, held) = (Currents(law, after, c), (Lane[])after.Clone());
                    law.Limit(before, held, c);
                    for (var lane = 0; lane < 4; lane++)
                    {
                        Lane[] Alone(Lane[] all) => [.. all.Select(v => Vector256.Create(v.GetElement(lane)))];
                        var (from, to) = (Alone(before), Alone(after));
                        var movedAlone = law.Moved(from, to, c);
                        var currents = Currents(law, to, c);
                        law.Limit(from, to, c);
                        Assert.Equal(movedAlone.AsInt64().GetElement(0), moved.AsInt64().GetElement(lane));
                        for (var p = 0; p < law.Ports; p++)
                        {
                            Assert.Equal(to[p].AsInt64().GetElement(0), held[p].AsInt64().GetElement(lane));
                            Assert.Equal(currents[p].AsInt64().GetElement(0), together[p].AsInt64().GetElement(lane));
                        }
                    }
                },
                iter: 400,
                threads: 1
            );
    }

    private static Lane[] Currents(Law law, Lane[] volts, Lane[] constants)
    {
        var currents = new Lane[law.Ports];
        law.Evaluate(volts, constants, currents, new Lane[law.Ports * law.Ports]);
        return currents;
    }

    private static (double[] Currents, double[] Slopes) Evaluate(Law law, double[] constants, double[] volts)
    {
        var c = constants.Select(v => Vector256.Create(v)).ToArray();
        var u = volts.Select(v => Vector256.Create(v)).ToArray();
        var i = new Lane[law.Ports];
        var g = new Lane[law.Ports * law.Ports];
        law.Evaluate(u, c, i, g);
        return ([.. i.Select(v => v.GetElement(2))], [.. g.Select(v => v.GetElement(2))]);
    }
}
