using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Xunit;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>
/// Our worlds against the reference solver's, healthy and for 25 random single faults (100 on request): every net's mean within 0.5 % plus a floor of 3 mV plus 1 % of the
/// net's own ripple (a winding's mean is the small difference of two large halves), every net's ripple within 3 % plus the floor. The valve combo's floor is 8 mV: its grids stand at zero volts behind megohms (7 of them where a leak drifted up, with 0.7 s) and are the last to come to rest. The reference starts
/// at our means, which only saves it cycles, and settles by its own measure. One world in twenty-five may be without a steady state in either solver;
/// nets that our solver calls floating, loose ends of windings, and the neutral, which is the reference's own zero, are left out.
/// A class a unit, so that they can be run side by side.
/// </summary>
public abstract class DemoAgreementTests(ITestOutputHelper output, string folder, int seed, double floor, double leak)
{
    private const double DcBound = 0.005;
    private const double OfRippleBound = 0.01;
    private const double RippleBound = 0.03;

    /// <summary>On request only: it takes the better part of an hour.</summary>
    [Fact(Explicit = true)]
    public void Steady_states_of_a_hundred_faults_agree_with_the_reference() => Compare(100);

    [Fact]
    public void Steady_states_agree_with_the_reference() => Compare(25);

    private void Compare(int faults)
    {
        var circuit = Circuit.From(DemoSheets.Read(folder)).Value!;
        var picked = new Random(seed)
            .GetItems([.. circuit.Faults], circuit.Faults.Count)
            .Distinct()
            .Where(f => !IsBeyondCompare(f))
            .Take(faults);
        List<IReadOnlyList<Fault>> sets =
        [
            [],
            .. picked.Select(f => new[] { f }),
        ];
        var loose = LooseNets.Of(circuit.Sheet);
        var probes = circuit
            .Sheet.Nets.Names.Where(n => n != NetTable.Ground && n != NetTable.Neutral && !loose.Contains(n))
            .SelectMany(Both)
            .ToList();
        var meter = MeterClass.Handheld with { InputOhms = 1e15 };
        var worlds = new Worlds(circuit);
        var answers = worlds.Ask(Setup.Default, sets, probes, meter, cancel: TestContext.Current.CancellationToken);
        var warmth = HeaterWarmth.Of(worlds, sets, TestContext.Current.CancellationToken);

        var report = new AgreementReport(folder);
        for (var i = 0; i < sets.Count; i++)
        {
            Compare(report, circuit, sets[i], warmth[i], probes, answers[i]);
        }

        output.WriteLine(report.ToString());
        Assert.Empty(report.Disagreements);
        Assert.True(report.Without.Count <= sets.Count / 25, report.ToString());
    }

    /// <summary>A grid leak of a hundred times its value has tens of megohms: what either solver keeps across an open branch then decides where the grid stands.</summary>
    private static bool IsBeyondCompare(Fault fault) => fault is { Mode: FailureMode.WrongValue, Severity: >= 100 };

    private static IEnumerable<Probe> Both(string net) =>
        [
            new Probe(net, net, NetTable.Ground, ProbeKind.Dc),
            new Probe(net, net, NetTable.Ground, ProbeKind.Ac, SaidAsRipple: true),
        ];

    private void Compare(
        AgreementReport report,
        Circuit circuit,
        IReadOnlyList<Fault> faults,
        IReadOnlyDictionary<string, double> warmth,
        List<Probe> probes,
        Answer[] answers
    )
    {
        var world = faults.Count == 0 ? "healthy" : faults[0].ToString();
        report.Worlds++;
        var reference = new SteadyState(new ReferenceCircuit(circuit.Sheet, Setup.Default, faults, warmth) { Leak = leak });
        var means = Figures(ProbeKind.Dc, probes, answers);
        var ripples = Figures(ProbeKind.Ac, probes, answers);
        if (means.Count == 0)
        {
            report.Without.Add($"{world} (ours)");
        }
        else if (!TrySettle(reference, means, ripples, out var why))
        {
            report.Without.Add($"{world} (reference: {why})");
        }
        else
        {
            CompareFigures(report, world, reference, probes.Zip(answers));
        }
    }

    private static bool TrySettle(
        SteadyState reference,
        Dictionary<string, double> means,
        Dictionary<string, double> ripples,
        out string why
    )
    {
        try
        {
            var settled = reference.SettleFrom(means, net => ripples.GetValueOrDefault(net));
            why = reference.Restless;
            return settled;
        }
        catch (InvalidOperationException)
        {
            // Its Newton could not start there: from rest it can.
            return TrySettleFromRest(reference, out why);
        }
    }

    private static bool TrySettleFromRest(SteadyState reference, out string why)
    {
        try
        {
            var settled = reference.SettleFromRest();
            why = reference.Restless;
            return settled;
        }
        catch (InvalidOperationException failure)
        {
            why = failure.Message;
            return false;
        }
    }

    private static Dictionary<string, double> Figures(ProbeKind kind, List<Probe> probes, Answer[] answers) =>
        probes
            .Zip(answers)
            .Where(p => p.First.Kind == kind && p.Second.HasValue)
            .ToDictionary(p => p.First.Red, p => p.Second.Value);

    private static double DcBoundOf(CycleFigures figures) =>
        (DcBound * Math.Abs(figures.Mean)) + (OfRippleBound * figures.Ripple);

    private void CompareFigures(
        AgreementReport report,
        string world,
        SteadyState reference,
        IEnumerable<(Probe Probe, Answer Answer)> pairs
    )
    {
        foreach (var (probe, answer) in pairs.Where(p => p.Answer.HasValue))
        {
            if (!reference.Figures.TryGetValue(probe.Red, out var figures))
            {
                continue;
            }

            if (probe.Kind == ProbeKind.Dc)
            {
                report.Compare(world, probe.Red, "dc", answer.Value, figures.Mean, DcBoundOf(figures) + floor);
            }
            else
            {
                report.Compare(world, probe.Red, "ripple", answer.Value, figures.Ripple, (RippleBound * figures.Ripple) + floor);
            }
        }
    }
}
