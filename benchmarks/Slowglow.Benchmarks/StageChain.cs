using System.Globalization;
using Slowglow.Circuits.Models.Diode;
using Slowglow.Circuits.Models.Transistor;
using Slowglow.Circuits.Models.Valve;
using Slowglow.Solving;

namespace Slowglow.Benchmarks;

/// <summary>
/// An invented chain of stages (a triode, an npn follower, a diode clamp and ten resistors each) written twice: as our equations and as cards of
/// the reference solver. Every fault is a resistance that changes, so that both can make it without building anew. Coupled directly (13 parts a
/// stage), where every fault is felt to the end of the chain, or by capacitors (15), as amplifiers mostly are.
/// </summary>
internal sealed class StageChain
{
    private const double Open = 1e12;
    private readonly bool capacitors;
    private readonly EquationsBuilder builder = new();
    private readonly Dictionary<string, int> nets = [];
    private readonly List<(string Name, int Slot, double Ohms)> resistors = [];

    public StageChain(int stages, bool capacitors = false)
    {
        this.capacitors = capacitors;
        Cards.Add("* chain of stages");
        var supply = "ht";
        Source(supply, 300, 10);
        Source("lv", 24, 1);
        for (var k = 1; k <= stages; k++)
        {
            supply = Stage(k, supply);
        }

        Parts = (capacitors ? 15 : 13) * stages;
        Equations = builder.Build();
        Slots = builder.SlotValues();
        Faults = [.. resistors.SelectMany(FaultsOf)];
    }

    public int Parts { get; }
    public string Coupling => capacitors ? "coupled by capacitors" : "coupled directly";
    public Equations Equations { get; }
    public double[] Slots { get; }

    /// <summary>Cards without nodeset and end.</summary>
    public List<string> Cards { get; } = [];
    public IReadOnlyDictionary<string, int> Nets => nets;

    /// <summary>Resistor, its slot, its ohms as made and with the fault.</summary>
    public IReadOnlyList<(string Name, int Slot, double Made, double Failed)> Faults { get; }

    private static IEnumerable<(string, int, double, double)> FaultsOf((string Name, int Slot, double Ohms) r)
    {
        // A slot that is open as made can only be shorted.
        double[] failed =
            r.Ohms >= Open ? [0.1] : [Open, 0.1, 3 * r.Ohms, 0.3 * r.Ohms, 1.5 * r.Ohms, 0.6 * r.Ohms, 8 * r.Ohms, 0.1 * r.Ohms];
        return failed.Select(f => (r.Name, r.Slot, r.Ohms, f));
    }

    private string Stage(int k, string supply)
    {
        string N(string what) => string.Create(CultureInfo.InvariantCulture, $"{what}{k}");
        Resistor(N("rd"), supply, N("h"), 2200);
        Resistor(N("ra"), N("h"), N("a"), 100e3);
        Resistor(N("rk"), N("k"), "0", 1500);
        Resistor(N("rg"), N("g"), "0", 22e3);
        Resistor(N("r1"), capacitors ? "lv" : N("a"), N("b"), 470e3);
        Resistor(N("r2"), N("b"), "0", capacitors ? 470e3 : 22e3);
        Resistor(N("rc"), "lv", N("c"), 1000);
        Resistor(N("re"), N("e"), "0", 10e3);
        Resistor(N("rl"), N("d"), "0", 4700);
        var next = string.Create(CultureInfo.InvariantCulture, $"g{k + 1}");
        Resistor(N("rx"), N("d"), capacitors ? N("x") : next, 1e6);
        if (capacitors)
        {
            Capacitor(N("ca"), N("a"), N("b"));
            Capacitor(N("cx"), N("x"), next);
        }

        Triode(k, N("a"), N("g"), N("k"));
        Bjt(k, N("c"), N("b"), N("e"));
        Diode(k, N("e"), N("d"));
        (string, string)[] shorts =
        [
            (N("a"), N("k")),
            (N("g"), N("k")),
            (N("c"), N("e")),
            (N("b"), N("e")),
            (N("b"), N("c")),
            (N("e"), N("d")),
        ];
        foreach (var ((a, b), i) in shorts.Select((s, i) => (s, i)))
        {
            Resistor(string.Create(CultureInfo.InvariantCulture, $"rs{k}x{i}"), a, b, Open);
        }

        return N("h");
    }

    private int Row(string net)
    {
        if (net == "0")
        {
            return -1;
        }

        if (!nets.TryGetValue(net, out var row))
        {
            nets[net] = row = builder.NewUnknown();
            Cards.Add($"rfloat{net} {net} 0 1e12");
        }

        return row;
    }

    private void Source(string net, double volts, double ohms)
    {
        builder.AddBranch(BranchKind.Conductance, Row(net), -1, builder.NewSlot(1 / ohms), builder.NewSlot(volts));
        Cards.Add(FormattableString.Invariant($"v{net} {net}src 0 {volts:R}"));
        Cards.Add(FormattableString.Invariant($"rsource{net} {net}src {net} {ohms:R}"));
    }

    private void Resistor(string name, string a, string b, double ohms)
    {
        var slot = builder.NewSlot(1 / ohms);
        builder.AddBranch(BranchKind.Conductance, Row(a), Row(b), slot);
        resistors.Add((name, slot, ohms));
        Cards.Add(FormattableString.Invariant($"{name} {a} {b} {ohms:R}"));
    }

    private void Capacitor(string name, string a, string b)
    {
        builder.AddBranch(BranchKind.Storage, Row(a), Row(b), builder.NewSlot(100e-9));
        Cards.Add($"{name} {a} {b} 100n");
    }

    private int Constants(params double[] values)
    {
        var first = builder.NewSlot(values[0]);
        foreach (var value in values.Skip(1))
        {
            builder.NewSlot(value);
        }

        return first;
    }

    /// <summary>Koren's law with the constants he gives for the 12AX7 (Glass Audio 8(5), 1996); grid current by Dempwolf and Zoelzer.</summary>
    private void Triode(int k, string a, string g, string cathode)
    {
        builder.AddElement(
            new TriodeLaw(),
            [Row(a), Row(g), Row(cathode)],
            Constants(100, 1.4, 1060, 600, 300, 0, 6e-4, 10, 1.3, 1)
        );
        var va = $"v({a},{cathode})";
        var vg = $"v({g},{cathode})";
        var anode = $"(0.5*({va}+sqrt({va}*{va}+4e-4)))";
        var drive = $"(600*(0.01+{vg}/sqrt(300+{anode}*{anode})))";
        Cards.Add($"ba{k} {a} {cathode} i={FormattableString.Invariant($"{2 / 1060.0:R}")}*pow({anode}/600*{Soft(drive)},1.4)");
        Cards.Add($"bg{k} {g} {cathode} i=6e-4*pow({Soft($"(10*{vg})")}/10,1.3)");
    }

    private static string Soft(string x) => $"({x}>40?{x}:ln(1+exp(min({x},40))))";

    private void Bjt(int k, string c, string b, string e)
    {
        builder.AddElement(new BjtLaw(), [Row(c), Row(b), Row(e)], Constants(1, 1e-14, 200, 4, 100, 1, 1, 1));
        Cards.Add($"q{k} {c} {b} {e} npnmade");
        if (k == 1)
        {
            Cards.Add(".model npnmade npn(is=1e-14 bf=200 br=4 vaf=100)");
            Cards.Add(".model diodemade d(is=2.5e-9 n=1.75 rs=0.6)");
        }
    }

    private void Diode(int k, string a, string cathode)
    {
        builder.AddElement(new DiodeLaw(), [Row(a), Row(cathode)], Constants(2.5e-9, 1.75, 0.6, 1e5, 1, 1e-6, 1));
        Cards.Add($"d{k} {a} {cathode} diodemade");
    }
}
