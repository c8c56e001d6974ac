using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.ReferenceSolver.Cards;
using Xunit;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>
/// Ripple and the rms current of every winding against the reference's settled transient, stepped so finely that half the steps change its own
/// figures by less than 0.2 %.
/// </summary>
public sealed class SupplyAgreementTests(ITestOutputHelper output)
{
    private const double Bound = 0.01;
    private const double Fine = 0.002;
    private const int Steps = 1000;

    /// <summary>Ripple below this is of no account, volts; a winding below this share of the largest current is one without load.</summary>
    private const double LeastRipple = 0.02;

    [Theory]
    [InlineData("regulated-supply", new[] { "RAW", "LOW" })]
    [InlineData("single-ended", new[] { "HT1", "HT2" })]
    [InlineData("transistor-power", new[] { "VP", "VN" })]
    public void Ripple_and_winding_currents_agree_within_one_percent(string name, string[] rails)
    {
        var cancel = TestContext.Current.CancellationToken;
        var worlds = new Worlds(Circuit.From(CircuitFiles.Read(name)).Value!);
        var currents = worlds.World(Setup.Default, [], cancel).WindingCurrents();
        var (fine, coarse) = (Settled(worlds, Steps, cancel), Settled(worlds, Steps / 2, cancel));
        var answers = Ask(worlds, rails, ProbeKind.Ac, cancel);
        foreach (var rail in rails.Where(r => fine.Figures[r].Ripple > LeastRipple))
        {
            Check(name, rail + " ripple", answers[rail], fine.Figures[rail].Ripple, coarse.Figures[rail].Ripple);
        }

        foreach (var (part, winding, section) in Sections(worlds.Circuit.Sheet))
        {
            var branch = TransformerCards.SectionOf(part, winding, section);
            var own = currents.Single(c =>
                c.Part == part.Designator && c.Winding == winding.Name && c.FromPin == winding.Pins[section]
            );
            Check(
                name,
                $"{part.Designator} {winding.Name}{section} rms",
                own.AmpsRms,
                fine.Currents[branch].Rms,
                coarse.Currents[branch].Rms
            );
        }
    }

    private void Check(string name, string what, double ours, double theirs, double coarse)
    {
        output.WriteLine($"{name}: {what}: {ours:G6} against {theirs:G6} ({coarse:G6} with half the steps)");
        Assert.Equal(theirs, coarse, Fine * theirs);
        Assert.Equal(theirs, ours, Bound * theirs);
    }

    private static IEnumerable<(TransformerPart, Winding, int)> Sections(Sheet sheet) =>
        sheet
            .Parts.OfType<TransformerPart>()
            .Where(t => !t.IsOutput)
            .SelectMany(t => t.Windings.SelectMany(w => w.SectionVolts.Select((_, s) => (t, w, s))));

    private static Dictionary<string, double> Ask(
        Worlds worlds,
        IReadOnlyList<string> nets,
        ProbeKind kind,
        CancellationToken cancel
    )
    {
        var probes = nets.Select(n => new Probe(n, n, NetTable.Ground, kind, SaidAsRipple: kind == ProbeKind.Ac)).ToList();
        var meter = MeterClass.Handheld with { InputOhms = 1e15 };
        var answers = worlds.Ask(
            Setup.Default,
            [
                [],
            ],
            probes,
            meter,
            cancel: cancel
        )[0];
        return nets.Zip(answers).Where(a => a.Second.HasValue).ToDictionary(a => a.First, a => a.Second.Value);
    }

    private static SteadyState Settled(Worlds worlds, int steps, CancellationToken cancel)
    {
        var sheet = worlds.Circuit.Sheet;
        var nets = sheet.Nets.Names.Where(n => n != NetTable.Ground).ToList();
        var means = Ask(worlds, nets, ProbeKind.Dc, cancel);
        var ripples = Ask(worlds, nets, ProbeKind.Ac, cancel);
        string[] branches = [.. Sections(sheet).Select(s => TransformerCards.SectionOf(s.Item1, s.Item2, s.Item3))];
        var state = new SteadyState(new ReferenceCircuit(sheet, Setup.Default, []), steps: steps, branches: branches);
        Assert.True(state.SettleFrom(means, net => ripples.GetValueOrDefault(net)), state.Restless);
        return state;
    }
}
