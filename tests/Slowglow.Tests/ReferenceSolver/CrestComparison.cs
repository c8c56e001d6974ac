using System.Globalization;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>
/// Resting states of one sheet, ours beside the reference's, net by net. The reference looks from our state, which has to stand by its own
/// equations; where it finds nothing from there it looks again from our healthy state, and then from ours once more, judging less narrowly. Nothing is left out without being named in one of the lists.
/// </summary>
internal sealed class CrestComparison(string sheet)
{
    private const double Relative = 1e-4;

    /// <summary>For nets near zero, volts.</summary>
    private const double Absolute = 1e-4;

    /// <summary>What our solver lets tangents differ from their laws by: 0.1 nA an element, of which a net joins some.</summary>
    private const double SettledAmps = 3e-10;

    public int Worlds { get; private set; }
    public int Figures { get; private set; }
    public int Floating { get; private set; }

    /// <summary>Figures that differ by no more than what our solver's settling current moves on so loose a net, and ends of windings that meet only diodes.</summary>
    public List<string> Loose { get; } = [];

    public double Worst { get; private set; }

    /// <summary>Worlds that ours does not settle.</summary>
    public List<string> Unsettled { get; } = [];

    /// <summary>Worlds in which the reference finds no state at all.</summary>
    public List<string> WithoutReference { get; } = [];

    public List<string> Disagreements { get; } = [];

    public void Compare(CrestWorld world, IReadOnlyDictionary<string, double> healthy)
    {
        Worlds++;
        if (!world.Settled)
        {
            Unsettled.Add($"{sheet}: {world.Name}");
            return;
        }

        var circuit = new ReferenceCircuit(world.Circuit.Sheet, Setup.Default, world.Faults, run: ReferenceRun.Crest);
        var found =
            Differences(world, circuit, circuit.RestText(world.Volts))
            ?? Differences(world, circuit, circuit.RestText(healthy))
            ?? Differences(world, circuit, circuit.RestText(world.Volts, rounded: true));
        if (found is null)
        {
            WithoutReference.Add($"{sheet}: {world.Name}");
        }
        else
        {
            Disagreements.AddRange(found.Select(d => $"{sheet}: {world.Name}: {d}"));
        }
    }

    /// <summary>Null when the reference finds nothing from there.</summary>
    private List<string>? Differences(CrestWorld world, ReferenceCircuit circuit, IReadOnlyList<string> text)
    {
        var nets = circuit.Deck.Nodes.Where(n => Deck.IsNet(n.Key) && world.Volts.ContainsKey(n.Key)).ToList();
        Dictionary<string, double[]> found;
        try
        {
            found = NgSpice.Run(text, "op", [.. nets.Select(n => n.Value)], plainly: true);
        }
        catch (InvalidOperationException)
        {
            return null;
        }

        return Differences(world, nets.ToDictionary(n => n.Key, n => found[n.Value][0]));
    }

    private List<string> Differences(CrestWorld world, Dictionary<string, double> found)
    {
        List<string> differences = [];
        List<string> loose = [];
        double worst = 0;
        var ends = LooseNets.Of(world.Circuit.Sheet);
        foreach (var (net, theirs) in found.Where(n => !world.Floats(n.Key)))
        {
            var ours = world.Volts[net];
            var difference = Math.Abs(ours - theirs);
            var share = difference / (Absolute + (Relative * Math.Abs(theirs)));
            var text = string.Create(CultureInfo.InvariantCulture, $"{net} {ours:G8} V against {theirs:G8} V");
            if (share <= 1)
            {
                worst = Math.Max(worst, share);
            }
            else
            {
                (ends.Contains(net) || difference <= world.Moved(net, SettledAmps) ? loose : differences).Add(text);
            }
        }

        if (differences.Count == 0)
        {
            var floating = found.Keys.Count(world.Floats);
            Figures += found.Count - floating;
            Floating += floating;
            Loose.AddRange(loose.Select(l => $"{sheet}: {world.Name}: {l}"));
            Worst = Math.Max(Worst, worst);
        }

        return differences;
    }

    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{sheet, -24} {Worlds, 4} worlds {Figures, 6} volts agree, worst {Worst:F2} of the bound; {Floating} floating, {Loose.Count} loose, {WithoutReference.Count} without a reference, {Unsettled.Count} unsettled, {Disagreements.Count} differ"
        );
}
