using System.Globalization;
using Slowglow.Sheets;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>Cards of one circuit for the reference solver, with a node for each net and nodes of the models' own.</summary>
internal sealed class Deck
{
    private readonly Dictionary<string, string> nodes = [];
    private readonly List<string> cards = [];
    private readonly List<string> coils = [];
    private readonly List<(string Node, Func<Func<string, double>, double> Volts)> guesses = [];
    private int count;

    /// <summary>Nets known so far, with their nodes; the chassis is node 0.</summary>
    public IReadOnlyDictionary<string, string> Nodes => nodes;

    /// <summary>Names of the inductors, whose currents are states.</summary>
    public IReadOnlyList<string> Coils => coils;

    public IReadOnlyList<string> Cards => cards;

    /// <summary>Node of a net.</summary>
    public string Node(string net)
    {
        if (net == NetTable.Ground)
        {
            return "0";
        }

        if (!nodes.TryGetValue(net, out var node))
        {
            node = string.Create(CultureInfo.InvariantCulture, $"n{++count}");
            nodes[net] = node;
            // What our own solver also lays on every net, so that one held by nothing has an answer.
            Card($"rfloat{node} {node} 0 1e12");
        }

        return node;
    }

    /// <summary>
    /// Says how the volts of a node inside a part come about from those of nets and of nodes guessed before, to start from: without it the
    /// library's Newton wanders off from a solution that it was given for the nets alone.
    /// </summary>
    public void Guess(string node, Func<Func<string, double>, double> volts) => guesses.Add((node, volts));

    /// <summary>Volts by node to start from, given those of nets.</summary>
    public Dictionary<string, double> Start(IReadOnlyDictionary<string, double> nets)
    {
        var start = nets.Where(n => nodes.ContainsKey(n.Key)).ToDictionary(n => nodes[n.Key], n => n.Value);
        foreach (var (node, volts) in guesses)
        {
            start[node] = volts(n => start.GetValueOrDefault(n));
        }

        return start;
    }

    /// <summary>True for a net of the sheet, false for a node inside a part.</summary>
    public static bool IsNet(string name) => !name.Contains('#', StringComparison.Ordinal);

    /// <summary>A node inside a part; its name holds a #, which no net of a sheet does.</summary>
    public string Inner(string part, string what) => Node($"{part}#{what}");

    public void Card(FormattableString card) => cards.Add(FormattableString.Invariant(card));

    public void Resistor(string name, string a, string b, double ohms) => Card($"r{name} {a} {b} {ohms:R}");

    public void Capacitor(string name, string a, string b, double farads) => Card($"c{name} {a} {b} {farads:R}");

    public void Coil(string name, string a, string b, double henries)
    {
        coils.Add("l" + name.ToLowerInvariant());
        Card($"l{name} {a} {b} {henries:R}");
    }

    /// <summary>Current from a to b through the source, amperes, as an expression.</summary>
    public void Current(string name, string a, string b, string expression) => Card($"b{name} {a} {b} i={expression}");

    /// <summary>Volts of a over b as an expression.</summary>
    public void Volts(string name, string a, string b, string expression) => Card($"b{name} {a} {b} v={expression}");
}
